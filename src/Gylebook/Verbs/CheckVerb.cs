using System.ComponentModel;
using Gylebook.Recipes;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook check FILE [--kit FILE] [--json]</summary>
internal sealed class CheckVerb : Command<CheckVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The file.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("A recipe, kit or food file of ours.")]
        public required string File { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        IReadOnlyList<Finding> findings = AnyFile.Check(settings.File, settings.Kit);
        return FindingLines.Tell(findings, settings.Json);
    }
}
