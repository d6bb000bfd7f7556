using System.ComponentModel;
using Gylebook.Forecast.Solving;
using Gylebook.Recipes.Kits;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook scale RECIPE --kit FILE [--from FILE] [--for WISH] [--out FILE [--force]] [--json]</summary>
internal sealed class ScaleVerb : Command<ScaleVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : SolvedSettings
    {
        /// <summary>The kit it was weighed for.</summary>
        [CommandOption("--from <FILE>")]
        [Description("The kit on which the recipe makes the beer that is to stay. Without it, the built-in Lantern Shed kit.")]
        public string? From { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [.. base.Valued, ("--from", "a file", From)];

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : Kit is null ? ValidationResult.Error("--kit: must name the file of the kit to brew on.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        OpenedFiles files = OpenedFiles.Open(settings.Recipe, settings.Kit);
        OpenedFiles from = settings.From is null ? files : OpenedFiles.OpenKit(settings.From);
        if (files.Recipe is null || files.Kit is null || from.Kit is null)
        {
            return FindingLines.Tell(settings.From is null ? files.Findings : [.. files.Findings, .. from.Findings], settings.Json);
        }

        Kit weighedFor = settings.From is null ? BuiltInKit.LanternShed : from.Kit;
        return SolvedFile.Tell(settings, files, (wish, recipe) => new RecipeSolver(files.Kit, files.Larder).Solve(recipe, wish, weighedFor));
    }
}
