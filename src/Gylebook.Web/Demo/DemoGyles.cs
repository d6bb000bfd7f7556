using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Tasting;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Numerics.Distributions;
using Gylebook.Science.Senses;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Packaging;

namespace Gylebook.Web.Demo;

/// <summary>The demo's gyles: one planned, one on brew day half done, one in the fermenter, one in the glass. Its readings are those of a hidden truth: one draw of the engine's own, which no page tells.</summary>
internal static class DemoGyles
{
    private const string Planned = "Plain Bitter", OnBrewDay = "Chestnut Mild", InFermenter = "Chestnut Mild";

    /// <summary>The word and the number of the draw that is true.</summary>
    private const string Truth = "what the shed does not know";
    private const int TrueDraw = 7, TruthDraws = 100;

    /// <summary>Minutes from one tap to the next.</summary>
    private const int Pace = 14;

    /// <summary>Puts them into a book that has just had the demo put in. Their times are told from now.</summary>
    public static async Task BrewAsync(Book book, TimeProvider clock, CancellationToken cancellation)
    {
        GyleDesk desk = new(book, clock);
        if (await OpenAsync(book, desk, InFermenter, $"{InFermenter}, five days ago", new(null, null), cancellation) is { } fermenting)
        {
            await BrewWholeAsync(desk, fermenting, clock.GetUtcNow().AddDays(-5.3), cancellation);
            await FermentAsync(desk, (await desk.OpenAsync(fermenting.Line.Id, cancellation))!, [1, 2, 2.9, 4, 5], cancellation);
        }

        if (await OpenAsync(book, desk, Planned, $"{Planned}, last month", new(null, null), cancellation) is { } finished)
        {
            await BrewWholeAsync(desk, finished, clock.GetUtcNow().AddDays(-34), cancellation);
            await FermentAsync(desk, (await desk.OpenAsync(finished.Line.Id, cancellation))!, [1, 2, 4, 7, 9, 11], cancellation);
            await TasteAsync(desk, (await desk.OpenAsync(finished.Line.Id, cancellation))!, clock.GetUtcNow(), cancellation);
        }

        if (await FindAsync(book, Planned, cancellation) is { } next)
        {
            await desk.PlanAsync(Order(next, $"{Planned}, next", new("Right", null)), DateOnly.FromDateTime(clock.GetLocalNow().DateTime).AddDays(4), cancellation);
        }

        if (await FindAsync(book, OnBrewDay, cancellation) is { } recipe
            && await desk.StartAsync(Order(recipe, $"{OnBrewDay}, today", new("Left", "Robin")), cancellation: cancellation) is ({ } line, _)
            && await desk.OpenAsync(line.Id, cancellation) is { } gyle)
        {
            await BrewHalfAsync(desk, gyle, clock.GetUtcNow(), cancellation);
        }
    }

    private static async Task<OpenGyle?> OpenAsync(Book book, GyleDesk desk, string recipe, string name, VesselPlan vessels, CancellationToken cancellation) =>
        await FindAsync(book, recipe, cancellation) is { } id && await desk.StartAsync(Order(id, name, vessels), cancellation: cancellation) is ({ } line, _)
            ? await desk.OpenAsync(line.Id, cancellation) : null;

    private static GyleOrder Order(Guid recipe, string name, VesselPlan vessels) => new(recipe)
    {
        Name = name, Vessels = vessels, IsDemo = true,
    };

    private static async Task<Guid?> FindAsync(Book book, string name, CancellationToken cancellation) =>
        (await book.Files.FindAsync(name, "recipe", cancellation)).Select(file => (Guid?)file.Id).FirstOrDefault();

    /// <summary>All steps up to copper-up, with what went in, and what a hydrometer and the marks showed there.</summary>
    private static async Task BrewHalfAsync(GyleDesk desk, OpenGyle gyle, DateTimeOffset now, CancellationToken cancellation)
    {
        List<BrewStep> done = [.. gyle.Plan.Steps.TakeWhile(step => step.Key != "to-boil")];
        DateTimeOffset at = await TapAsync(desk, gyle, done, now.AddMinutes(-Pace * done.Count), cancellation);
        if (GyleInputs.Of(gyle.Plan)?.Forecast(Truth, [], TruthDraws).HowSure is { } truth)
        {
            StageReadouts its = StageReadouts.Of(Stage.CopperUp, 0);
            await desk.KeepAsync(gyle,
            [
                Read($$"""{ "at": "copper-up", "volume": "{{True(truth, its.LitresWithSolids):0.0}} L", "temperature": "20 °C" }""", at.AddMinutes(-2)),
                Read($$"""{ "at": "copper-up", "gravity": "{{True(truth, its.Gravity):0.000}}", "temperature": "20 °C" }""", at.AddMinutes(-1)),
            ], cancellation);
        }
    }

    /// <summary>All of brew day, with what was read in the kettle and in the fermenter.</summary>
    private static async Task BrewWholeAsync(GyleDesk desk, OpenGyle gyle, DateTimeOffset from, CancellationToken cancellation)
    {
        await TapAsync(desk, gyle, gyle.Plan.Steps, from, cancellation);
        if (GyleInputs.Of(gyle.Plan)?.Forecast(Truth, [], TruthDraws).HowSure is { } truth)
        {
            StageReadouts kettle = StageReadouts.Of(Stage.CopperUp, 0), cast = StageReadouts.Of(Stage.Cast, 0);
            await desk.KeepAsync(gyle,
            [
                Read($$"""{ "at": "copper-up", "volume": "{{True(truth, kettle.LitresWithSolids):0.0}} L", "temperature": "20 °C" }""", from.AddMinutes(10 * Pace)),
                Read($$"""{ "at": "copper-up", "gravity": "{{True(truth, kettle.Gravity):0.000}}", "temperature": "20 °C" }""", from.AddMinutes((10 * Pace) + 1)),
                Read($$"""{ "at": "cast", "gravity": "{{True(truth, cast.Gravity):0.000}}", "temperature": "20 °C" }""", from.AddMinutes(Pace * (gyle.Plan.Steps.Count - 2))),
            ], cancellation);
        }
    }

    /// <summary>Gravities on some days: an S-shaped curve from the true cast to the true end, as a hydrometer shows it, and what went in meanwhile.</summary>
    private static async Task FermentAsync(GyleDesk desk, OpenGyle gyle, double[] days, CancellationToken cancellation)
    {
        if (gyle.Pitched is not { } pitched || GyleInputs.Of(gyle.Plan)?.Forecast(Truth, [], TruthDraws).HowSure is not { } truth)
        {
            return;
        }

        GyleDay[] additions = [.. GyleDays.Of(gyle.Plan, pitched, pitched).Where(day => day.Key.StartsWith("ferment-", StringComparison.Ordinal))];
        await desk.DoAsync(gyle, [.. additions.Where(day => day.AfterPitch < days[^1]).Select(day => Tap(day.At) with { Kind = ActionKind.Done, Step = day.Key, Stage = "ferment", What = day.Sentence })], cancellation);
        double start = True(truth, BeerReadouts.OriginalGravity), end = True(truth, BeerReadouts.FinalGravity), added = start - True(truth, BeerReadouts.CastGravity);
        LogisticAttenuation curve = new(start, end, -0.04, 75);
        await desk.KeepAsync(
            gyle,
            [
                .. days.Select((day, place) => Read(
                    $$"""{ "at": "ferment", "gravity": "{{curve.At(24 * day) - (additions.Any(addition => addition.AfterPitch > day) ? added : 0) + (0.0004 * Math.Sin(7 * place)):0.000}}", "temperature": "20 °C", "degassed": true }""",
                    pitched.AddDays(day))),
            ],
            cancellation);
    }

    /// <summary>Packaged in bottles, by the frozen plan's litres, tasted by three who do not exist, and compared.</summary>
    private static async Task TasteAsync(GyleDesk desk, OpenGyle gyle, DateTimeOffset now, CancellationToken cancellation)
    {
        FrozenForecast frozen = FrozenForecast.Of(gyle.Plan);
        if (GyleInputs.Of(gyle.Plan) is not { } inputs || gyle.Pitched is not { } pitched || BandOf(frozen, "finalGravity") is not { } end || BandOf(frozen, "packagedLitres") is not { } litres)
        {
            return;
        }

        FinishedAnswer finished = FinishedCheck.Of(new FinishedQuestion
        {
            Read = Stillness.Of(CellarSeries.Of([], gyle.Log.Readings, new CellarSpan(pitched, null), now).Points), Expected = new Quantiles(end.Low, end.Likely, end.High), Now = now,
        });
        PackageQuestion asked = new()
        {
            Finished = finished, Litres = litres, Fills = [.. inputs.Kit.Packages.Where(package => package.Kind == "bottle").Select(package => new PackageFill(package, null))],
            Volumes = inputs.Recipe.Package.Carbonation?.Value.Volumes ?? 2, Priming = PrimingSource.Of(PrimingSource.Usual, inputs.Larder), WarmestSince = 20, WarmestStore = PackageWish.UsualStore,
        };
        PackagePlan plan = PackageCheck.Of(asked);
        if (plan.IsRefused)
        {
            return;
        }

        DateTimeOffset filled = pitched.AddDays(14);
        await desk.DoAsync(
            gyle,
            [
                PackageDesk.Filled(plan, asked, filled),
                .. new[] { ("Ash", 6.5, 4.0, "bread crust, a little thin"), ("Fern", 7.0, 5.0, "another, please"), ("Rook", 5.0, 4.5, "wants more hop") }
                    .Select((one, place) => Tap(filled.AddDays(16).AddMinutes(place)) with
                    {
                        Kind = ActionKind.Tasted, Stage = "pour", What = $"{one.Item1}: {one.Item4}",
                        Detail = new Tasted(one.Item1, [new("Malt", "none", "a bakery", one.Item2), new("Body", "thin", "soup", one.Item3)], one.Item4).Write(),
                    }),
                Tap(filled.AddDays(17)) with { Kind = ActionKind.Compared, Stage = "pour", What = "triangle: 5 of 9 right", Detail = new Compared(TasteTest.Triangle, 9, 5, "two weeks and five weeks old").Write() },
            ],
            cancellation);
    }

    /// <summary>Taps off steps one after the other; when the last was done.</summary>
    private static async Task<DateTimeOffset> TapAsync(GyleDesk desk, OpenGyle gyle, IReadOnlyList<BrewStep> steps, DateTimeOffset at, CancellationToken cancellation)
    {
        List<BrewAction> taps = [];
        foreach (BrewStep step in steps)
        {
            taps.AddRange(step.Items.Select((item, place) => GyleDesk.Tick(step, item, Tap(at.AddSeconds(20 * place)))));
            taps.Add(Tap(at = at.AddMinutes(Pace)) with { Kind = ActionKind.Done, Step = step.Key, Stage = step.Stage });
        }

        await desk.DoAsync(gyle, taps, cancellation);
        return at;
    }

    private static Band? BandOf(FrozenForecast frozen, string name) => frozen.End(name, "low") is { } low && frozen.Likely(name) is { } likely && frozen.End(name, "high") is { } high
        ? new Band(low, likely, high, "", BandKind.Quantiles) : null;

    private static double True(HowSure truth, Readout readout) => truth.Ensemble[readout][TrueDraw];

    private static BrewAction Tap(DateTimeOffset at) => new() { At = at, EntryId = Guid.CreateVersion7(at), What = "" };

    private static GyleReading Read(FormattableString entry, DateTimeOffset at) =>
        GyleDesk.EntryOf(ReadingsFile.ReadEntry(FormattableString.Invariant(entry)).Reading!, at, Guid.CreateVersion7(at));
}
