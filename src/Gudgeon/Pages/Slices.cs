namespace Gudgeon.Pages;

/// <summary>
/// A slice of the job: its services, its pages, and what it puts into the navigation. A new slice is one class and
/// one line in <see cref="Slices.All"/>.
/// </summary>
public interface ISlice
{
    void AddServices(IServiceCollection services)
    {
    }

    void MapPages(IEndpointRouteBuilder app);

    /// <summary>What the slice offers inside a book, in the order in which it is shown.</summary>
    IEnumerable<NavItem> Nav => [];
}

/// <summary>Where a navigation item stands.</summary>
public enum NavPlace
{
    /// <summary>One of the five verbs of the job, under the thumb.</summary>
    Verb,

    /// <summary>The lesser row: what one looks up.</summary>
    Shelf,
}

/// <summary>One way to go inside a book.</summary>
/// <param name="Path">Below the book's own address, as in <c>strip</c>.</param>
/// <param name="Label">One word where one will do.</param>
/// <param name="Icon">Name of the drawing in <see cref="Elements.Icon"/>.</param>
public sealed record NavItem(NavPlace Place, int Order, string Path, string Label, string Icon);

/// <summary>Every slice there is, and the navigation that they make together.</summary>
public static class Slices
{
    public static IReadOnlyList<ISlice> All { get; } =
    [
        new Light.LightSlice(),
        new Books.BooksSlice(),
        new Strip.StripSlice(),
        new Account.AccountSlice(),
        new Parts.PartsSlice(),
        new Refit.RefitSlice(),
        new Lift.LiftSlice(),
        new Measure.MeasureSlice(),
        new Measure.Work.WorkSlice(),
        new Story.StorySlice(),
        new Photos.PhotosSlice(),
        new Photos.PinsSlice(),
        new Labels.LabelsSlice(),
        new Shop.ShopSlice(),
        new Tighten.TightenSlice(),
        new Circuits.CircuitsSlice(),
        new Register.RegisterSlice(),
        new Timing.TimingSlice(),
        new Start.StartSlice(),
        new Plan.PlanSlice(),
    ];


    public static IReadOnlyList<NavItem> Nav { get; } = [.. All.SelectMany(s => s.Nav).OrderBy(n => n.Order)];
}
