using System.Text.Json;
using Gylebook.Gyles;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Web.Features.Gyles;

/// <summary>One tap on brew day as a browser sends it.</summary>
/// <param name="Id">Made where it was tapped: sent twice, it is kept once.</param>
/// <param name="At">When it was tapped, by that device's clock.</param>
/// <param name="Kind">A kind of action, or <c>read</c>.</param>
public sealed record SentEntry(Guid Id, DateTimeOffset At, string Kind)
{
    private const string Read = "read";
    private const int MostText = 2000, MostKey = 100;

    /// <summary>Key of the step.</summary>
    public string? Step { get; init; }

    /// <summary>Key of what was ticked off.</summary>
    public string? Item { get; init; }

    /// <summary>Words.</summary>
    public string? What { get; init; }

    /// <summary>When a timer ends.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>The entry it takes back.</summary>
    public Guid? Undoes { get; init; }

    /// <summary>One entry of a readings file.</summary>
    public JsonElement? Reading { get; init; }

    /// <summary>Why it cannot be taken; null when it can.</summary>
    /// <param name="gyle">The gyle it is for.</param>
    /// <param name="reading">The reading it is, if it is one.</param>
    /// <param name="action">The action it is, if it is one.</param>
    public string? Meant(OpenGyle gyle, out GyleReading? reading, out BrewAction? action)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        (reading, action) = (null, null);
        if (Id == Guid.Empty || What?.Length > MostText || Step?.Length > MostKey || Item?.Length > MostKey)
        {
            return Invariant($"an entry has an id, a text of at most {MostText} characters, and keys of at most {MostKey}");
        }

        if (Kind == Read)
        {
            return MeantReading(out reading);
        }

        if (!Enum.TryParse(Kind, ignoreCase: true, out ActionKind kind) || !Enum.IsDefined(kind))
        {
            return $"\"{Kind}\" is no kind of entry";
        }

        BrewAction said = new() { At = At, EntryId = Id, Kind = kind, Step = Step, Item = Item, What = What?.Trim() ?? "", Until = Until, Undoes = Undoes };
        var step = gyle.Log.Steps.FirstOrDefault(step => step.Step.Key == Step)?.Step;
        action = kind == ActionKind.Ticked && step?.Items.FirstOrDefault(item => item.Key == Item) is { } item ? GyleDesk.Tick(step, item, said) : said with { Stage = step?.Stage };
        return null;
    }

    private string? MeantReading(out GyleReading? reading)
    {
        reading = null;
        if (Reading is not { ValueKind: JsonValueKind.Object } typed)
        {
            return "a reading has to say what was read";
        }

        (Gylebook.Recipes.Readings.TakenReading? taken, IReadOnlyList<Finding> findings) = ReadingsFile.ReadEntry(typed.GetRawText());
        if (taken is null)
        {
            return findings.FirstOrDefault(finding => finding.Severity == Severity.Error)?.Message ?? "it cannot be read";
        }

        reading = GyleDesk.EntryOf(taken, At, Id);
        return null;
    }
}
