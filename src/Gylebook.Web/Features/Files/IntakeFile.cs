using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Store;

namespace Gylebook.Web.Features.Files;

/// <summary>A file on its way into the book, as the page tells of it.</summary>
/// <param name="name">What it is called on the reader's own device.</param>
internal sealed class IntakeFile(string name)
{
    /// <summary>What it is called on the reader's own device.</summary>
    public string Name => name;

    /// <summary>As it was read; null when it could not be fetched.</summary>
    public FileInHand? File { get; init; }

    /// <summary>What it becomes here, where it is of an open standard; null for a file of ours.</summary>
    public Arrival? Arrival { get; init; }

    /// <summary>What such a file brought; null before.</summary>
    public Landing? Landing { get; set; }

    /// <summary>What was taken back of it; null while nothing was.</summary>
    public LandingUndone? Undone { get; set; }

    /// <summary>Whether all of it can be taken back.</summary>
    public bool MayBeTakenBack => Undone is null && Landing?.Added.Any() == true;

    /// <summary>What did not come as it stood.</summary>
    public IReadOnlyList<Travel> Travels => Arrival?.Travels ?? [];

    /// <summary>What of the book it is now.</summary>
    public IEnumerable<KeptFile> Landed => Undone is null ? Landing?.Added ?? [] : [];

    /// <summary>What the book did with it; null before.</summary>
    public FilePut? Put { get; set; }

    /// <summary>Why the last thing was not done; null when it was.</summary>
    public string? Failure { get; set; }

    /// <summary>Whether it is wanted although fields of it cannot be read.</summary>
    public bool IsTakenUnread { get; set; }

    /// <summary>Another name for it, as typed.</summary>
    public string Wanted { get; set; } = "";

    /// <summary>All that was found in it.</summary>
    public IReadOnlyList<Finding> Findings => File?.Findings ?? [.. Arrival?.Findings ?? [], .. (Arrival?.Files ?? []).SelectMany(file => file.Findings.Select(finding => finding with { Message = $"{file.Form.Noun} \"{file.Name}\": {finding.Message}" }))];

    /// <summary>Whether what it says is in the book.</summary>
    public bool IsIn => Kept is not null || Landed.Any();

    /// <summary>Whether somebody has to say what is to be done.</summary>
    public bool IsAsked => Put is FilePut.Clash;

    /// <summary>Whether it is clear what it would take the place of.</summary>
    public bool MayReplace => Put is FilePut.Clash { Standing.Count: 1 };

    /// <summary>Whether it could enter as it is, with fields that cannot be read.</summary>
    public bool MayBeTakenUnread => Put is null && !IsTakenUnread && File is { IsReadable: false, CanBeDraft: true };

    /// <summary>Where what it says is shown now; null when it is not in the book.</summary>
    public string? Url => Kept is { } kept ? UrlOf(kept) : null;

    /// <summary>Where a file of the book is shown.</summary>
    public static string UrlOf(KeptFile kept) => kept switch
    {
        { Kind: "recipe", Id: var id } => PageUrls.Recipe(id),
        { Kind: "kit", Id: var id } => PageUrls.Kit(id),
        { Kind: "water", Id: var id } => PageUrls.Liquor(id),
        { Kind: "food", Id: var id } => PageUrls.OwnFood(id),
        { Id: var id } => PageUrls.LarderSheet(id),
    };

    /// <summary>What became of it, in a word.</summary>
    public string Did => IsIn ? "in" : IsAsked ? "asked" : "out";

    /// <summary>What became of it, in a sentence.</summary>
    public string Says => Failure is { } failure ? $"Not taken: {failure}." : Put switch
    {
        FilePut.Added added => $"{Words(added.File)} is in the book.",
        FilePut.Replaced replaced => $"{Words(replaced.File)} says this now; undo on its page brings back what it said.",
        FilePut.Unchanged same => $"{Words(same.File)} says the same already.",
        FilePut.Clash clash => $"In the book already: {string.Join(" and ", clash.Standing)}.",
        FilePut.Refused refused => $"Not taken: {refused.Why}.",
        _ when Undone is { } undone => Invariant($"Taken back: {undone.Gone.Count} of the things it brought are in the bin.{(undone.Stayed.Count > 0 ? $" {string.Join(", ", undone.Stayed)} stay: they were changed or brewed since." : "")}"),
        _ when Landing is { } landing => Invariant($"{Arrival!.Standard}: {landing.Added.Count()} of {Arrival.Files.Count} things are new in the book.{Standing(landing)}"),
        _ when Arrival is { IsRead: false } => $"Not taken: it is no {Arrival.Standard} that can be read.",
        _ when Arrival is not null => $"{Arrival.Standard}, with nothing in it that has a file here.",
        _ when File?.CanBeDraft == true => "Not taken: fields of it cannot be read.",
        _ => "Not taken: it is no file of ours.",
    };

    private KeptFile? Kept => Put switch
    {
        FilePut.Added added => added.File,
        FilePut.Replaced replaced => replaced.File,
        FilePut.Unchanged same => same.File,
        _ => null,
    };

    private static string Standing(Landing landing)
    {
        KeptFile[] standing = [.. landing.Puts.OfType<FilePut.Clash>().Select(clash => clash.Standing[0])];
        return standing.Length == 0 ? "" : $" In the book already, and left as it is: {string.Join(", ", standing.Select(file => file.ToString()))}.";
    }

    private static string Words(KeptFile file) => $"The {file.Kind} \"{file.Name}\"";
}
