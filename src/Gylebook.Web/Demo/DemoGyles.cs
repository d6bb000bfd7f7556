using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast.Report.Doubt;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Web.Demo;

/// <summary>The demo's gyles: one planned, one on brew day half done. Its readings are those of a hidden truth: one draw of the engine's own, which no page tells.</summary>
internal static class DemoGyles
{
    private const string Planned = "Plain Bitter", OnBrewDay = "Chestnut Mild";

    /// <summary>The word and the number of the draw that is true.</summary>
    private const string Truth = "what the shed does not know";
    private const int TrueDraw = 7, TruthDraws = 100;

    /// <summary>Minutes from one tap to the next.</summary>
    private const int Pace = 14;

    /// <summary>Puts them into a book that has just had the demo put in. Their times are told from now.</summary>
    public static async Task BrewAsync(Book book, TimeProvider clock, CancellationToken cancellation)
    {
        GyleDesk desk = new(book, clock);
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
        DateTimeOffset at = now.AddMinutes(-Pace * done.Count);
        List<BrewAction> taps = [];
        foreach (BrewStep step in done)
        {
            taps.AddRange(step.Items.Select((item, place) => GyleDesk.Tick(step, item, Tap(at.AddSeconds(20 * place)))));
            taps.Add(Tap(at = at.AddMinutes(Pace)) with { Kind = ActionKind.Done, Step = step.Key, Stage = step.Stage });
        }

        await desk.DoAsync(gyle, taps, cancellation);
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

    private static double True(HowSure truth, Readout readout) => truth.Ensemble[readout][TrueDraw];

    private static BrewAction Tap(DateTimeOffset at) => new() { At = at, EntryId = Guid.CreateVersion7(at), What = "" };

    private static GyleReading Read(FormattableString entry, DateTimeOffset at) =>
        GyleDesk.EntryOf(ReadingsFile.ReadEntry(FormattableString.Invariant(entry)).Reading!, at, Guid.CreateVersion7(at));
}
