using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle put GYLE WHAT AMOUNT [--portion NAME] [--book FILE] [--json]: something goes into the fermenter that the recipe does not have.</summary>
internal sealed class GylePutVerb : GyleVerb<GylePutVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>What.</summary>
        [CommandArgument(1, "<WHAT>")]
        [Description("A food, sugar, hop or yeast of your larder or of the tables, by name.")]
        public required string What { get; init; }

        /// <summary>How much.</summary>
        [CommandArgument(2, "<AMOUNT>")]
        [Description("How much: \"500 g\".")]
        public required string Amount { get; init; }
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.IsWrong(gyle, isNeeded: true))
        {
            return 1;
        }

        IReadOnlyList<Finding> wrong = await new CellarDesk(desk, TimeProvider.System).PutAsync(gyle, settings.What, settings.Amount, settings.Portion, cancellation: cancellation);
        if (wrong.Count > 0)
        {
            return FindingLines.Tell([.. wrong], settings.Json);
        }

        Console.WriteLine(settings.Json
            ? JsonPen.Write(pen => pen.Text("put", $"{settings.Amount} {settings.What}"))
            : "Written into the log; it counts from now on, also in \"finished?\", the package and the allergens. Sugar and dry powders make a beer that ferments foam over: dissolve them, pour slowly, leave room.");
        return 0;
    }
}
