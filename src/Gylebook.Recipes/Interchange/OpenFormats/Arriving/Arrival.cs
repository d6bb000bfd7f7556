using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Lots;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>What somebody else's file becomes here: files of ours, and all that did not travel as it stood.</summary>
public sealed record Arrival
{
    /// <summary>The standard, with its version: <c>BeerJSON 1.0</c>.</summary>
    public required string Standard { get; init; }

    /// <summary>The files, those first that others name: sheets, then waters and kits, then recipes.</summary>
    public IReadOnlyList<ArrivedFile> Files { get; init; } = [];

    /// <summary>What was defaulted, converted, repaired or left, each by its place in the file.</summary>
    public IReadOnlyList<Travel> Travels { get; init; } = [];

    /// <summary>What is wrong with the file itself; with an error among them nothing was read.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether it could be read at all.</summary>
    public bool IsRead => Findings.All(finding => finding.Severity != Severity.Error);
}

/// <summary>One file of ours that came out of somebody else's.</summary>
/// <param name="Form">Its form.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Text">Its text.</param>
/// <param name="From">Where in the file it stood.</param>
/// <param name="Findings">What is doubtful in it.</param>
public sealed record ArrivedFile(FileForm Form, string Name, string Text, string From, IReadOnlyList<Finding> Findings);

/// <summary>What is known here that a file from elsewhere does not say.</summary>
public sealed record ArrivalWishes
{
    /// <summary>The kit it is read for: bag or tun, bottle or keg, and all that a file says nothing of.</summary>
    public Kit Kit { get; init; } = BuiltInKit.LanternShed;

    /// <summary>Litres into the fermenter that a recipe comes to with the sheets its file brings; null where nobody reckons it.</summary>
    public Func<Recipe, IEnumerable<LarderSheet>, VolumeAt20C?>? CastOf { get; init; }
}
