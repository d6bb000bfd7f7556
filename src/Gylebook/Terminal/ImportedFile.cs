using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;

namespace Gylebook.Terminal;

/// <summary>A file of ours that was to enter the book, and what became of it.</summary>
/// <param name="Path">Where it lies, as typed.</param>
/// <param name="File">As it was read; null when it could not be opened.</param>
/// <param name="Findings">What was found.</param>
/// <param name="Put">What the book did; null when it was not asked.</param>
internal sealed record ImportedFile(string Path, FileInHand? File, IReadOnlyList<Finding> Findings, FilePut? Put) : TakenFile(Path, Findings)
{
    /// <inheritdoc/>
    public override bool IsIn => Put is FilePut.Added or FilePut.Replaced or FilePut.Unchanged;

    /// <summary>What of the book it is now; null when it is not in.</summary>
    public KeptFile? Kept => Put switch
    {
        FilePut.Added added => added.File,
        FilePut.Replaced replaced => replaced.File,
        FilePut.Unchanged same => same.File,
        _ => null,
    };

    private string Did => Put switch
    {
        FilePut.Added => "added",
        FilePut.Replaced => "replaced",
        FilePut.Unchanged => "unchanged",
        FilePut.Clash => "clash",
        FilePut.Refused => "refused",
        _ => "unread",
    };

    /// <inheritdoc/>
    protected override string InWords => Put switch
    {
        FilePut.Added { File: var file } => $"{file} is in the book.",
        FilePut.Replaced { File: var file } => $"{file} says this now; undo on its page brings back what it said.",
        FilePut.Unchanged { File: var file } => $"{file} says the same already.",
        FilePut.Clash { Standing: [var one] } => $"not taken: {one} is in the book already. Say --replace, --keep-both or --as NAME.",
        FilePut.Clash { Standing: var several } => $"not taken: {string.Join(" and ", several)} are in the book already, and it could be any of them. Say --keep-both or --as NAME.",
        FilePut.Refused { Why: var why } => $"not taken: {why}.",
        _ when File?.CanBeDraft == true => "not taken: fields of it cannot be read. --even-unreadable takes it as it is, with these findings.",
        _ => "not taken.",
    };

    /// <summary>Puts a file that was read into the book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="path">Where the file lies.</param>
    /// <param name="file">The file.</param>
    /// <param name="answer">What to do when its name is there already.</param>
    /// <param name="evenUnreadable">Whether it enters although fields of it cannot be read.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task<ImportedFile> TakeAsync(Book book, string path, FileInHand file, ClashAnswer answer, bool evenUnreadable, CancellationToken cancellation)
    {
        FilePut? put = file.MayEnter(evenUnreadable)
            ? await book.Files.PutAsync(file.Text, answer, $"import {System.IO.Path.GetFileName(path)}", cancellation)
            : null;
        return new ImportedFile(path, file, file.Findings, put);
    }

    /// <inheritdoc/>
    protected override void Write(JsonPen pen)
    {
        pen.Text("file", Path);
        pen.Text("did", Did);
        pen.Text("kind", Kept?.Kind ?? File?.Form?.Noun);
        pen.Text("name", Kept?.Name);
        pen.Text("id", Kept?.CalledBy);
        pen.List("standing", Put is FilePut.Clash clash ? clash.Standing : [], standing => WriteKept(pen, standing));
        pen.List("findings", Findings, finding => ForecastJson.WriteFinding(pen, finding));
    }

    /// <summary>What stands in the book, in a few words.</summary>
    public static void WriteKept(JsonPen pen, KeptFile kept)
    {
        pen.Text("kind", kept.Kind);
        pen.Text("name", kept.Name);
        pen.Text("id", kept.CalledBy);
        pen.Text("number", kept.Id.ToString());
    }
}
