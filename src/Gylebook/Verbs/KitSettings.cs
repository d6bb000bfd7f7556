using System.ComponentModel;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>What every verb takes that brews in thought, or tries a food.</summary>
internal abstract class KitSettings : JsonSettings
{
    /// <summary>The kit.</summary>
    [CommandOption("--kit <FILE>")]
    [Description("The kit's file. Without one a brew is planned for the built-in Lantern Shed kit, and a dose of food for sea level.")]
    public string? Kit { get; init; }

    /// <summary>The verb's own options that need a value: name, what must follow, and what did.</summary>
    protected virtual IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [];

    /// <inheritdoc/>
    public override ValidationResult Validate() => CommandLine.NoneLacksItsValue([("--kit", "a file", Kit), .. Valued]);
}
