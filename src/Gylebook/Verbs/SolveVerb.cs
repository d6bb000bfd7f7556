using Gylebook.Forecast.Solving;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook solve RECIPE --for WISH [--kit FILE] [--out FILE [--force]] [--json]</summary>
internal sealed class SolveVerb : Command<SolveVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : SolvedSettings
    {
        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : For is null ? ValidationResult.Error("--for: must say the beer wanted, such as package=20L,og=1.054,ibu=28.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        OpenedFiles files = OpenedFiles.Open(settings.Recipe, settings.Kit);
        return files.Recipe is null || files.Kit is null
            ? FindingLines.Tell(files.Findings, settings.Json)
            : SolvedFile.Tell(settings, files, (wish, recipe) => new RecipeSolver(files.Kit, files.Larder).Solve(recipe, wish));
    }
}
