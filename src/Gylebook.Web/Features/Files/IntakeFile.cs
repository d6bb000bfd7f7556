using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
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

    /// <summary>What the book did with it; null before.</summary>
    public FilePut? Put { get; set; }

    /// <summary>Why the last thing was not done; null when it was.</summary>
    public string? Failure { get; set; }

    /// <summary>Whether it is wanted although fields of it cannot be read.</summary>
    public bool IsTakenUnread { get; set; }

    /// <summary>Another name for it, as typed.</summary>
    public string Wanted { get; set; } = "";

    /// <summary>All that was found in it.</summary>
    public IReadOnlyList<Finding> Findings => File?.Findings ?? [];

    /// <summary>Whether what it says is in the book.</summary>
    public bool IsIn => Kept is not null;

    /// <summary>Whether somebody has to say what is to be done.</summary>
    public bool IsAsked => Put is FilePut.Clash;

    /// <summary>Whether it is clear what it would take the place of.</summary>
    public bool MayReplace => Put is FilePut.Clash { Standing.Count: 1 };

    /// <summary>Whether it could enter as it is, with fields that cannot be read.</summary>
    public bool MayBeTakenUnread => Put is null && !IsTakenUnread && File is { IsReadable: false, CanBeDraft: true };

    /// <summary>Where what it says is shown now; null when it is not in the book.</summary>
    public string? Url => Kept switch
    {
        null => null,
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

    private static string Words(KeptFile file) => $"The {file.Kind} \"{file.Name}\"";
}
