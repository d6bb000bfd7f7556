using System.ComponentModel;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>What every verb takes that weighs a recipe anew.</summary>
internal abstract class SolvedSettings : KitSettings
{
    /// <summary>The recipe.</summary>
    [CommandArgument(0, "<RECIPE>")]
    [Description("A recipe file. What it names is looked up in the folders larder/ and foods/ beside it, then in the tables.")]
    public required string Recipe { get; init; }

    /// <summary>The beer wanted.</summary>
    [CommandOption("--for <WISH>")]
    [Description("The beer wanted, with commas between: package=20L, og=1.054, ibu=28, gas=2.3 volumes, and shares of the grist by a malt's name, \"munich malt=10%\". What is not said stays as it is.")]
    public string? For { get; init; }

    /// <summary>How sure the package must be full.</summary>
    [CommandOption("--confidence <PERCENT>")]
    [Description("In how many of a hundred brews the package is to be full, 1 to 99: then more is planned, and what that costs is said. Without it, it is full in the likely brew.")]
    public string? Confidence { get; init; }

    /// <summary>Where to write it.</summary>
    [CommandOption("--out <FILE>")]
    [Description("The recipe file to write. Without it, the recipe is printed, and what changed goes to the other output.")]
    public string? Out { get; init; }

    /// <summary>Whether to write over one.</summary>
    [CommandOption("--force")]
    [Description("Write over a file of ours that lies there.")]
    public bool Force { get; init; }

    /// <inheritdoc/>
    protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--for", "a wish", For), ("--confidence", "a number", Confidence), ("--out", "a file", Out)];
}
