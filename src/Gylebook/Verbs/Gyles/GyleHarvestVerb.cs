using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Recipes;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle harvest GYLE --amount "400 mL" [--cells "1.2 billion/mL"] [--called NAME] [--on DAY] [--of YEAST] [--book FILE] [--json]</summary>
internal sealed class GyleHarvestVerb : GyleVerb<GyleHarvestVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleSettings
    {
        /// <summary>How much.</summary>
        [CommandOption("--amount <AMOUNT>")]
        [Description("How much slurry, with its unit: \"400 mL\", \"400 g\".")]
        public string? Amount { get; init; }

        /// <summary>Cells.</summary>
        [CommandOption("--cells <CELLS>")]
        [Description("Living cells, where you have counted them: \"1.2 billion/mL\".")]
        public string? Cells { get; init; }

        /// <summary>The lot's name.</summary>
        [CommandOption("--called <NAME>")]
        [Description("What stands on the jar; the gyle's name when left out.")]
        public string? Called { get; init; }

        /// <summary>The day.</summary>
        [CommandOption("--on <DAY>")]
        [Description("The day it was taken out, 2026-03-01; today when left out.")]
        public string? On { get; init; }

        /// <summary>Which yeast.</summary>
        [CommandOption("--of <YEAST>")]
        [Description("Which yeast, where several were pitched.")]
        public string? Of { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
            [("--amount", "a volume or a mass", Amount), ("--cells", "a number of cells", Cells), ("--called", "a name", Called), ("--on", "a day", On), ("--of", "a yeast", Of)];

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : Amount is null ? ValidationResult.Error("--amount: say how much slurry, as in \"400 mL\".")
            : On is not null && Day() is null ? ValidationResult.Error($"--on: {On}; write a day as \"2026-03-01\": year, month, day.")
            : ValidationResult.Success();

        /// <summary>The day; null for today.</summary>
        internal DateOnly? Day() => DateOnly.TryParseExact(On, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (gyle.Pitched is null || HarvestOutlook.Of(gyle.Plan) is not { } outlook)
        {
            Console.Error.WriteLine(CommandLine.OneLine(gyle.Pitched is null ? $"\"{gyle.Line.Name}\" was not pitched yet: gylebook gyle do \"{gyle.Line.Name}\" --step pitch says so." : "No yeast was pitched, or this program can no longer read the files of the plan."));
            return 1;
        }

        HarvestDesk harvests = new(desk, TimeProvider.System);
        TypedHarvest typed = new(settings.Amount!, settings.Day() ?? harvests.Today) { Cells = settings.Cells ?? "", Called = settings.Called ?? "", Of = settings.Of ?? "" };
        (BrewAction? entry, IReadOnlyList<Finding> findings) = await harvests.HarvestAsync(gyle, outlook, typed, cancellation);
        if (entry is null)
        {
            foreach (Finding finding in findings)
            {
                Console.Error.WriteLine(CommandLine.OneLine($"--{finding.Where}: {finding.Message}."));
            }

            return 1;
        }

        Write(entry, typed, outlook, settings.Json);
        return 0;
    }

    private static void Write(BrewAction entry, TypedHarvest typed, HarvestOutlook outlook, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("entry", entry.EntryId.ToString());
                pen.Text("lot", entry.Lot);
                pen.Text("amount", typed.Amount);
                pen.Text("day", typed.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
                pen.Text("mayContain", outlook.MayContain);
                pen.Texts("harvestDoubts", outlook.Doubts);
                pen.Texts("cautions", outlook.Cautions);
            }));
            return;
        }

        Console.WriteLine(CommandLine.OneLine($"In the larder: lot {LotKey.NameIn(entry.Lot!)}. In the log, entry {entry.EntryId}: {entry.What}."));
        foreach (string caution in outlook.Cautions)
        {
            Console.WriteLine(CommandLine.OneLine(caution));
        }
    }
}
