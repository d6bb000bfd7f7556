using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle plan RECIPE --on DAY [--planned GYLE] [--kit FILE] [--as NAME] [--fermenter NAME] [--keg NAME] [--book FILE] [--json]</summary>
internal sealed class GylePlanVerb : GyleOfRecipeVerb<GylePlanVerb.Settings>
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleOfRecipeSettings
    {
        /// <summary>The day.</summary>
        [CommandOption("--on <DAY>")]
        [Description("The day on which it is brewed: 2026-12-05.")]
        public string? On { get; init; }

        /// <summary>The same, read.</summary>
        internal DateOnly? Day => DateOnly.TryParseExact(On, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--on", "a day", On)];

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            base.Validate() is { Successful: false } lacking ? lacking
            : Day is null ? ValidationResult.Error($"--on: {(On is null ? "say the day" : $"\"{On}\" is no day")}; write it as 2026-12-05.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    protected override async Task<int> BeginAsync(GyleDesk desk, GyleOrder order, KeptFile recipe, Settings settings, CancellationToken cancellation)
    {
        (GyleLine? gyle, IReadOnlyList<Finding> findings) = await desk.PlanAsync(order, settings.Day!.Value, cancellation);
        if (gyle is null)
        {
            return Refuse(findings, settings.Json);
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                GyleText.Write(pen, gyle);
                pen.Text("recipe", recipe.Name);
            }));
            return 0;
        }

        Console.WriteLine(CommandLine.OneLine($"{GyleText.Line(gyle)}. gylebook gyle start \"{recipe.Name}\" --planned \"{gyle.Name}\" starts it."));
        return 0;
    }
}
