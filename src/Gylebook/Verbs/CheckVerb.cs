using System.ComponentModel;
using Gylebook.Terminal;
using Gylebook.Recipes;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook check FILE [--kit FILE] [--json]</summary>
internal sealed class CheckVerb : Command<CheckVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : CommandSettings
    {
        /// <summary>The file.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("A recipe, kit or food file of ours.")]
        public required string File { get; init; }

        /// <summary>The kit a recipe is checked on.</summary>
        [CommandOption("--kit <FILE>")]
        [Description("The kit a recipe is checked on; without one the built-in Lantern Shed kit.")]
        public string? Kit { get; init; }

        /// <summary>Whether to write JSON.</summary>
        [CommandOption("--json")]
        [Description("Write one JSON object instead of lines.")]
        public bool Json { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(("--kit", "a file", Kit));
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        IReadOnlyList<Finding> findings = AnyFile.Check(settings.File, settings.Kit);
        return FindingLines.Tell(findings, settings.Json);
    }
}
