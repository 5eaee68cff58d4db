using System.IO.Compression;
using Gudgeon.Tests.Commands;

namespace Gudgeon.Tests.Photos;

public class BookBackupTests
{
    private static Shell WithPhotos(out string folder)
    {
        var shell = new Shell();
        shell.Good("new", "Test engine", "--from-nothing");
        folder = Directory.CreateDirectory(shell.File("phone")).FullName;
        File.WriteAllBytes(Path.Combine(folder, "a.jpg"), TestPictures.Jpeg());
        File.WriteAllBytes(Path.Combine(folder, "b.png"), TestPictures.Png());
        shell.Good("photos", folder);
        return shell;
    }

    [Fact]
    public void Backup_takes_the_photos_along_and_restore_brings_them_back_to_the_byte()
    {
        using var shell = WithPhotos(out _);
        Assert.Contains("3 entries and 2 photos copied", shell.Good("journal", "backup", shell.File("whole.zip")), StringComparison.Ordinal);
        Assert.Contains("Book again made of 3 entries and 2 photos", shell.Good("journal", "restore", shell.File("whole.zip"), "--as", "again"), StringComparison.Ordinal);

        shell.Good("journal", "export", shell.File("one.jsonl"), "--book", "test-engine");
        shell.Good("journal", "export", shell.File("two.jsonl"), "--book", "again");
        Assert.Equal(File.ReadAllBytes(shell.File("one.jsonl")), File.ReadAllBytes(shell.File("two.jsonl")));
        using var zip = ZipFile.OpenRead(shell.File("whole.zip"));
        Assert.Equal(3, zip.Entries.Count);
        Assert.Equal([TestPictures.Jpeg().Length, TestPictures.Png().Length], zip.Entries.Where(e => e.FullName != "book.db").OrderBy(e => e.FullName.EndsWith("png", StringComparison.Ordinal)).Select(e => (int)e.Length));
    }

    [Fact]
    public void Backup_of_the_journal_alone_says_what_it_leaves_out()
    {
        using var shell = WithPhotos(out _);
        Assert.Contains("2 photos not in it: a name that ends in .zip takes them along", shell.Good("journal", "backup", shell.File("alone.db")), StringComparison.Ordinal);
        Assert.Contains("made of 3 entries and 0 photos", shell.Good("journal", "restore", shell.File("alone.db"), "--as", "again"), StringComparison.Ordinal);
    }

    [Fact]
    public void Backup_never_overwrites_and_a_photo_gone_from_the_disk_is_named()
    {
        using var shell = WithPhotos(out _);
        File.WriteAllText(shell.File("there.zip"), "mine");
        Assert.Contains("a backup never overwrites", shell.Run("journal", "backup", shell.File("there.zip")).Errors, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(shell.File("there.zip")));

        var photos = Directory.EnumerateFiles(shell.File("books"), "*.png", SearchOption.AllDirectories).Single();
        File.Delete(photos);
        var answer = shell.Run("journal", "backup", shell.File("short.zip"));
        Assert.Equal(1, answer.Exit);
        Assert.Contains($"Photo {Path.GetFileNameWithoutExtension(photos)} is in the book and no longer on the disk", answer.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(shell.File("short.zip")));
    }

    [Theory]
    [InlineData("../outside.txt", "\"../outside.txt\" in it")]
    [InlineData("photos/../../outside.jpg", "\"photos/../../outside.jpg\" in it")]
    [InlineData("photos/0000000000000000000000000000000000000000000000000000000000000000.jpg", "differs")]
    public void File_that_is_no_backup_is_refused_and_leaves_nothing_behind(string name, string met)
    {
        using var shell = WithPhotos(out _);
        shell.Good("journal", "backup", shell.File("whole.zip"));
        using (var zip = ZipFile.Open(shell.File("whole.zip"), ZipArchiveMode.Update))
        {
            using var strange = new StreamWriter(zip.CreateEntry(name).Open());
            strange.Write("not mine");
        }

        Assert.Contains(met, shell.Run("journal", "restore", shell.File("whole.zip"), "--as", "again").Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(shell.File("books"), "again")));
        Assert.False(File.Exists(shell.File("outside.txt")));
        Assert.False(File.Exists(shell.File("outside.jpg")));
    }

    [Fact]
    public void Damaged_zip_is_refused()
    {
        using var shell = WithPhotos(out _);
        File.WriteAllText(shell.File("bad.zip"), "no zip at all");
        Assert.Contains("expected a zip that can be read whole", shell.Run("journal", "restore", shell.File("bad.zip")).Errors, StringComparison.Ordinal);
    }
}
