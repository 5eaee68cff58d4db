using Gudgeon.Tests.Commands;

namespace Gudgeon.Tests.Photos;

public class PhotosCommandTests
{
    [Fact]
    public void Folder_of_photos_is_taken_and_what_is_none_is_said()
    {
        using var shell = new Shell();
        shell.Good("new", "Test engine", "--from-nothing");
        var folder = Directory.CreateDirectory(shell.File("phone")).FullName;
        File.WriteAllBytes(Path.Combine(folder, "a.jpg"), TestPictures.Jpeg());
        File.WriteAllBytes(Path.Combine(folder, "b.png"), TestPictures.Png());
        File.WriteAllText(Path.Combine(folder, "c.jpg"), "no photo");

        var first = shell.Run("photos", folder);
        Assert.Equal(1, first.Exit);
        Assert.StartsWith("2 taken, 0 in the book before, 1 not taken.", first.Output, StringComparison.Ordinal);
        Assert.Contains("c.jpg: met a file that is no photo, whatever its name says", first.Output, StringComparison.Ordinal);

        Assert.StartsWith("0 taken, 2 in the book before, 1 not taken.", shell.Run("photos", folder).Output, StringComparison.Ordinal);
        Assert.Contains("Photo \"a.jpg\" added", shell.Good("journal"), StringComparison.Ordinal);
    }

    [Fact]
    public void File_that_is_not_there_is_refused()
    {
        using var shell = new Shell();
        shell.Good("new", "Test engine", "--from-nothing");
        var missing = shell.File("none.jpg");

        var answer = shell.Run("photos", missing);
        Assert.Equal(1, answer.Exit);
        Assert.Contains("met no such file or folder", answer.Errors, StringComparison.Ordinal);
    }
}
