using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Packaging;
using PackageWish = Gylebook.Gyles.Packaging.PackageWish;
using Gylebook.Science.Quantities;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Gyles.Packaging;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle package GYLE [--in KINDS] [--volumes V] [--prime NAME] [--sugar MASS] [--warmest T] [--store T] [--weakest P] [--burst P] [--portion NAME] [--done] [--book FILE] [--json]</summary>
internal sealed class GylePackageVerb : GyleVerb<GylePackageVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>Into what.</summary>
        [CommandOption("--in <KINDS>")]
        [Description("Packages of the kit: bottle, or several with how many of each: \"10 bottle, keg\". The recipe's when unsaid.")]
        public string? In { get; init; }

        /// <summary>Gas.</summary>
        [CommandOption("--volumes <VOLUMES>")]
        [Description("Volumes of carbon dioxide in the glass; the recipe's when unsaid.")]
        public string? Volumes { get; init; }

        /// <summary>What it is primed with.</summary>
        [CommandOption("--prime <NAME>")]
        [Description("A sugar, or a food with sugar; the recipe's, or white sugar, when unsaid.")]
        public string? Prime { get; init; }

        /// <summary>How much of that is weighed already.</summary>
        [CommandOption("--sugar <MASS>")]
        [Description("How much of it is weighed already: \"110 g\". Weighed for the volumes when unsaid.")]
        public string? Sugar { get; init; }

        /// <summary>Warmest since.</summary>
        [CommandOption("--warmest <TEMPERATURE>")]
        [Description("The warmest the beer has stood since the yeast stopped.")]
        public string? Warmest { get; init; }

        /// <summary>Warmest store.</summary>
        [CommandOption("--store <TEMPERATURE>")]
        [Description("The warmest it may come to stand in its package; \"28 °C\" when unsaid.")]
        public string? Store { get; init; }

        /// <summary>The weakest part of a keg.</summary>
        [CommandOption("--weakest <PRESSURE>")]
        [Description("Rating of a keg's weakest part, tap or regulator: \"4 bar\".")]
        public string? Weakest { get; init; }

        /// <summary>A burst.</summary>
        [CommandOption("--burst <PRESSURE>")]
        [Description("Pressure at which a keg is carbonated in haste: \"2 bar\".")]
        public string? Burst { get; init; }

        /// <summary>Write it down.</summary>
        [CommandOption("--done")]
        [Description("It was packaged so: write it into the log.")]
        public bool Done { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--in", "packages", In), ("--volumes", "a number", Volumes), ("--prime", "a name", Prime), ("--sugar", "a mass", Sugar),
            ("--warmest", "a temperature", Warmest), ("--store", "a temperature", Store), ("--weakest", "a pressure", Weakest), ("--burst", "a pressure", Burst), .. base.Valued,
        ];
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.IsWrong(gyle, isNeeded: true))
        {
            return 1;
        }

        PackageDesk packages = new(desk, new CellarDesk(desk, TimeProvider.System), TimeProvider.System);
        if (await packages.OpenAsync(gyle, settings.Portion, cancellation) is not { } of)
        {
            Console.Error.WriteLine("This program can no longer read the files of the plan.");
            return 1;
        }

        OptionReader options = new();
        PackageWish wish = Wish(settings, of, options);
        (PackageQuestion? asked, PackagePlan? plan, string? wrong) = options.Findings.Count > 0 ? default : of.Of(wish);
        if (wrong is not null)
        {
            options.Wrong("package.wrong", "--" + wrong.Split(':')[0], wrong[(wrong.IndexOf(':', StringComparison.Ordinal) + 2)..], null);
        }

        if (plan is null)
        {
            return FindingLines.Tell([.. options.Findings], settings.Json);
        }

        Tell(settings, plan, asked!);
        if (settings.Done && !plan.IsRefused)
        {
            await packages.PackagedAsync(of, plan, asked!, cancellation);
        }

        return plan.IsRefused ? 1 : 0;
    }

    private static PackageWish Wish(Settings settings, OpenPackage of, OptionReader options)
    {
        PackageWish wish = of.Recipes with
        {
            Volumes = settings.Volumes is { } volumes ? options.Number("--volumes", volumes.Replace("volumes", "", StringComparison.OrdinalIgnoreCase), "must be a number from 0 to 8") : null,
            Priming = settings.Prime,
            PrimingGrams = settings.Sugar is { } sugar ? options.Quantity<Mass>("--sugar", sugar)?.Kilograms * 1000 : null,
            WarmestSince = settings.Warmest is { } warmest ? options.Quantity<Temperature>("--warmest", warmest)?.Celsius : null,
            WarmestStore = settings.Store is { } store ? options.Quantity<Temperature>("--store", store)?.Celsius ?? PackageWish.UsualStore : PackageWish.UsualStore,
            WeakestPart = settings.Weakest is { } weakest ? options.Quantity<GaugePressure>("--weakest", weakest)?.Bar : null,
            BurstBar = settings.Burst is { } burst ? options.Quantity<GaugePressure>("--burst", burst)?.Bar : null,
        };
        return settings.In is not { } kinds ? wish : wish with { Into = [.. kinds.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Fill)] };
    }

    private static (string, int?) Fill(string typed) =>
        typed.Split(' ', 2) is [var first, var kind] && int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? (kind.Trim(), count) : (typed, null);

    private static void Tell(Settings settings, PackagePlan plan, PackageQuestion asked)
    {
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Flag("refused", plan.IsRefused);
                pen.List("refusals", plan.Refusals, refusal =>
                {
                    pen.Text("code", refusal.Code);
                    pen.Text("why", refusal.Why);
                    pen.Text("instead", refusal.Instead);
                });
                pen.Number("volumes", plan.Volumes, 2);
                pen.Number("primingGrams", plan.PrimingGrams, 1);
                pen.Text("primingWith", plan.PrimingGrams is null ? null : asked.Priming!.Name);
                pen.List("packages", plan.Filled, filled =>
                {
                    pen.Text("kind", filled.Kind);
                    pen.Number("count", filled.Count, 0);
                    pen.Number("litres", filled.Litres, 2);
                    pen.Number("storedBar", filled.PressureStored, 2);
                });
                pen.Number("regulatorBar", plan.Keg?.GaugeBar, 3);
                pen.Number("leftOverLitres", plan.IsRefused ? null : plan.LeftOver, 2);
                pen.Texts("cautions", plan.Cautions);
            }));
            return;
        }

        foreach (PackageRefusal refusal in plan.Refusals)
        {
            Console.WriteLine($"Not like this. {refusal.Why} {refusal.Instead}");
        }

        if (plan.PrimingGrams is { } grams)
        {
            Console.WriteLine(Invariant($"Weigh {grams:0} g of {asked.Priming!.Name}: {plan.Volumes:0.0} volumes, {plan.VolumesBand!.Value.Low:0.0} to {plan.VolumesBand.Value.High:0.0} as much or as little beer as may come out."));
        }

        foreach (FilledPackages filled in plan.Filled)
        {
            Console.WriteLine(Invariant($"{filled.Count} × {filled.Kind}, {filled.Litres:0.0} L; {filled.PressureStored:0.0} bar at {asked.WarmestStore:0} °C."));
        }

        if (plan.Keg is { } keg)
        {
            Console.WriteLine(Invariant($"Set the regulator to {keg.GaugeBar:0.00} bar at {keg.Celsius:0} °C for one to two weeks{(keg is { BurstBar: { } burst, BurstHours: { } hours } ? Invariant($", or {burst:0.0} bar for {hours.Low:0} to {hours.High:0} hours; taste after {keg.TasteAfterHours:0}") : "")}."));
            Console.WriteLine(Invariant($"{keg.PurgeCycles} fillings of {keg.PurgeBar:0.0} bar drive the air out first; {keg.LineMetres:0.0} m of 3/16 inch vinyl tube."));
        }

        foreach (string caution in plan.Cautions)
        {
            Console.WriteLine(caution);
        }
    }
}
