namespace Gylebook.Store;

/// <summary>A recipe, kit, water plan or sheet of the book as the file it is.</summary>
/// <param name="Kind">What it is: one of <see cref="BookFiles.Kinds"/>.</param>
/// <param name="Id">Which one.</param>
/// <param name="Name">As the text says.</param>
/// <param name="CalledBy">The id by which recipes call it; null for what has none.</param>
/// <param name="Text">The whole text, letter for letter.</param>
/// <param name="Revision">To be named when saving.</param>
/// <param name="IsDamaged">Whether the disk no longer gives back what was written.</param>
public sealed record KeptFile(string Kind, Guid Id, string Name, string? CalledBy, string Text, long Revision, bool IsDamaged)
{
    /// <summary>In a sentence: <c>recipe "Hedgerow Brown"</c>.</summary>
    public override string ToString() => CalledBy is null ? $"{Kind} \"{Name}\"" : $"{Kind} \"{Name}\" ({CalledBy})";
}

/// <summary>What to do with a file whose name, or the id by which recipes call it, is in the book already.</summary>
public abstract record ClashAnswer
{
    private ClashAnswer()
    {
    }

    /// <summary>Nothing: whoever brings the file is asked.</summary>
    public sealed record Ask : ClashAnswer;

    /// <summary>Its text becomes an edit of the one that is there, which undo takes back.</summary>
    public sealed record Replace : ClashAnswer;

    /// <summary>It enters beside the other, under the next free name and id.</summary>
    public sealed record KeepBoth : ClashAnswer;

    /// <summary>It enters under that name.</summary>
    /// <param name="Name">The name; an id is made of it.</param>
    public sealed record Called(string Name) : ClashAnswer;
}

/// <summary>What became of a file.</summary>
public abstract record FilePut
{
    private FilePut()
    {
    }

    /// <summary>It is in the book as a new one.</summary>
    /// <param name="File">As it stands there.</param>
    public sealed record Added(KeptFile File) : FilePut;

    /// <summary>Its text took the place of another, as an edit.</summary>
    /// <param name="File">As it stands there.</param>
    public sealed record Replaced(KeptFile File) : FilePut;

    /// <summary>The book says the same already.</summary>
    /// <param name="File">As it stands there.</param>
    public sealed record Unchanged(KeptFile File) : FilePut;

    /// <summary>Nothing was done: its name or id is in the book, and the answer does not tell which to take.</summary>
    /// <param name="Standing">What bears it.</param>
    public sealed record Clash(IReadOnlyList<KeptFile> Standing) : FilePut;

    /// <summary>Nothing was done.</summary>
    /// <param name="Why">In a sentence.</param>
    public sealed record Refused(string Why) : FilePut;
}
