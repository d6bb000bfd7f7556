using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange.OpenFormats.Arriving;
using Gylebook.Store;

namespace Gylebook.Terminal;

/// <summary>A file of an open standard that was to enter the book, and what became of it.</summary>
/// <param name="Path">Where it lies, as typed.</param>
/// <param name="Arrival">What it becomes here.</param>
/// <param name="Landing">What the book did; null when there was nothing to put into it.</param>
internal sealed record LandedFile(string Path, Arrival Arrival, Landing? Landing)
    : TakenFile(Path, [.. Arrival.Findings, .. Arrival.Files.SelectMany(Placed)])
{
    /// <inheritdoc/>
    public override bool IsIn => Arrival.IsRead && Landing is not null;

    /// <inheritdoc/>
    protected override string InWords =>
        !Arrival.IsRead ? $"not taken: it is no {Arrival.Standard} that can be read."
        : Landing is null ? $"{Arrival.Standard}, with nothing in it that has a file here."
        : $"{Arrival.Standard}; {Landing.Added.Count()} of {Arrival.Files.Count} things are new in the book.{(Landing.Added.Any() ? " gylebook import --undo takes them back." : "")}";

    /// <summary>What it brought of a kind, where that is one thing; null for none and for several.</summary>
    public KeptFile? TheOne(string kind) => Landing?.Added.Where(file => file.Kind == kind).ToList() is [var one] ? one : null;

    /// <inheritdoc/>
    protected override void Tell(TextWriter to)
    {
        base.Tell(to);
        foreach (FilePut put in Landing?.Puts ?? [])
        {
            to.WriteLine(CommandLine.OneLine($"  {Words(put)}"));
        }

        TravelLines.Tell(Arrival.Travels, to);
    }

    /// <inheritdoc/>
    protected override void Write(JsonPen pen)
    {
        pen.Text("file", Path);
        pen.Text("did", IsIn ? "landed" : "unread");
        pen.Text("standard", Arrival.Standard);
        pen.Text("landing", Landing?.Id.ToString());
        pen.List("added", Landing?.Added.ToList() ?? [], kept => ImportedFile.WriteKept(pen, kept));
        pen.List("standing", Landing?.Puts.OfType<FilePut.Clash>().SelectMany(clash => clash.Standing).ToList() ?? [], kept => ImportedFile.WriteKept(pen, kept));
        TravelLines.Write(pen, Arrival.Travels);
        pen.List("findings", Findings, finding => ForecastJson.WriteFinding(pen, finding));
    }

    private static IEnumerable<Finding> Placed(ArrivedFile file) =>
        file.Findings.Select(finding => finding with { Where = $"{file.Form.Noun} \"{file.Name}\" {finding.Where}" });

    private static string Words(FilePut put) => put switch
    {
        FilePut.Added added => $"{added.File} is in the book.",
        FilePut.Unchanged same => $"{same.File} says the same already.",
        FilePut.Clash clash => $"{clash.Standing[0]} is in the book already, and stays as it is.",
        FilePut.Refused refused => $"not taken: {refused.Why}.",
        _ => "",
    };
}
