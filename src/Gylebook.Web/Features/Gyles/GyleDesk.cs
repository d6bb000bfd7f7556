using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Liquors;
using Gylebook.Recipes.Readings;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Kits;
using Gylebook.Web.Features.Larders;

namespace Gylebook.Web.Features.Gyles;

/// <summary>Gyles as pages and terminal work with them: started, opened, read and followed.</summary>
/// <param name="book">The book.</param>
/// <param name="clock">The time.</param>
public sealed class GyleDesk(Book book, TimeProvider clock)
{
    /// <summary>What a gyle of a recipe would be brewed from, and its plan as it would be frozen; null when there is no such recipe.</summary>
    /// <param name="recipeId">Which recipe of the book.</param>
    /// <param name="kitId">On which kit of the book; null for the one in use.</param>
    /// <param name="name">What to call it; null for the recipe's name and the day.</param>
    /// <param name="isDemo">Part of the demo, which is not to keep a first start waiting: its bands are of fewer draws.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<GyleToBe?> PrepareAsync(
        Guid recipeId, Guid? kitId = null, string? name = null, bool isDemo = false, CancellationToken cancellation = default)
    {
        if (await book.Files.FindAsync("recipe", recipeId, cancellation) is not { } file)
        {
            return null;
        }

        string called = await FreeNameAsync(name ?? Invariant($"{file.Name}, {clock.GetLocalNow():d MMMM yyyy}"), cancellation);
        (Guid? kept, Kit kit) = await KitAsync(kitId, cancellation);
        (string? waterText, WaterPlan? water) = await WaterAsync(recipeId, cancellation);
        return GyleToBe.Of(called, file.Text, kept, kit, waterText, water, await OwnLarder.OfAsync(book, cancellation), clock.GetUtcNow(),
            isDemo ? GyleInputs.LiveDraws : GyleInputs.PlanDraws);
    }

    /// <summary>Starts a gyle of a recipe: cuts a version, freezes the plan.</summary>
    /// <param name="recipeId">Which recipe of the book.</param>
    /// <param name="kitId">On which kit of the book; null for the one in use.</param>
    /// <param name="name">What to call it; null for the recipe's name and the day.</param>
    /// <param name="isDemo">Part of the demo.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The gyle; none, and why, where the recipe cannot be brewed as it is. Nothing is in the book then.</returns>
    public async Task<(GyleLine? Gyle, IReadOnlyList<Finding> Findings)> StartAsync(
        Guid recipeId, Guid? kitId = null, string? name = null, bool isDemo = false, CancellationToken cancellation = default)
    {
        GyleToBe gyle = await PrepareAsync(recipeId, kitId, name, isDemo, cancellation) ?? throw new ArgumentOutOfRangeException(nameof(recipeId), recipeId, "No such recipe in the book.");
        if (gyle.Plan is not { } plan)
        {
            return (null, gyle.Findings);
        }

        Guid id = await book.Gyles.PlanAsync(recipeId, gyle.Name, gyle.KitId, isDemo: isDemo, cancellation: cancellation);
        await book.Gyles.StartAsync(id, version => GylePlanFile.Write(PlanOf(version.Document) with { RecipeVersion = version.Number }), cancellation);
        return (await book.Gyles.FindAsync(id, cancellation), gyle.Findings);

        // Somebody may have typed in another tab meanwhile.
        GylePlan PlanOf(string text) => text == gyle.RecipeText ? plan
            : gyle.With(text).Plan ?? throw new InvalidOperationException("The recipe was changed while the gyle started, and cannot be brewed as it is now.");
    }

    /// <summary>How much of each lot went into gyles, kg, by <c>sheet/lot</c>.</summary>
    public Task<Dictionary<string, double>> UsedOfLotsAsync(CancellationToken cancellation = default) => book.Readings.UsedOfLotsAsync(cancellation);

    /// <summary>A gyle as it stands; null when there is none, or its plan cannot be read.</summary>
    public async Task<OpenGyle?> OpenAsync(Guid id, CancellationToken cancellation = default)
    {
        if (await book.Gyles.FindAsync(id, cancellation) is not { Portions: [{ } whole, ..] } line
            || await book.Gyles.PlanDocumentAsync(id, cancellation) is not { } document
            || GylePlanFile.Read(document, out _) is not { } plan)
        {
            return null;
        }

        List<Logged<GyleReading>> readings = await book.Readings.ListAsync(whole.Id, cancellation: cancellation);
        List<Logged<BrewAction>> actions = await book.Readings.ActionsAsync(whole.Id, cancellation);
        return new OpenGyle(line, plan, new GyleLog(plan.Steps, actions.ConvertAll(action => action.Entry), readings.ConvertAll(reading => reading.Entry)));
    }

    /// <summary>Puts readings into a gyle's log.</summary>
    public Task<int> ReadAsync(OpenGyle gyle, IEnumerable<TakenReading> readings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        DateTimeOffset now = clock.GetUtcNow();
        return KeepAsync(gyle, [.. readings.Select(taken => EntryOf(taken, now, Guid.CreateVersion7(now)))], cancellation);
    }

    /// <summary>Puts readings that have a number and a time already into a gyle's log; one that is there is passed over.</summary>
    public Task<int> KeepAsync(OpenGyle gyle, IReadOnlyCollection<GyleReading> readings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        return book.Readings.AddAsync(gyle.Whole, readings, cancellation);
    }

    /// <summary>Takes a table of readings into a portion, as what a device of that name said.</summary>
    public Task<TableReport> TakeTableAsync(GylePortion into, string name, string text, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(into);
        return TableIntake.TakeAsync(book, into.Id, name, text, clock, cancellation);
    }

    /// <summary>Puts actions into a gyle's log.</summary>
    public async Task<int> DoAsync(OpenGyle gyle, IReadOnlyCollection<BrewAction> actions, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        return await book.Readings.AddAsync(gyle.Whole, actions, cancellation);
    }

    /// <summary>A reading as the log keeps it: as it was typed, and its numbers beside it.</summary>
    public static GyleReading EntryOf(TakenReading taken, DateTimeOffset at, Guid entry)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return new()
        {
            At = at,
            EntryId = entry,
            Stage = ReadingsFile.Word(taken.At),
            Instrument = taken.Instrument,
            Gravity = taken.Gravity?.Value,
            Volume = taken.Volume?.Value,
            Temperature = taken.Temperature?.Value,
            Ph = taken.Ph?.Value,
            Typed = ReadingsFile.WriteEntry(taken),
        };
    }

    /// <summary>An entry that says that something went in; it uses up the lot.</summary>
    public static BrewAction Tick(BrewStep step, StepItem item, BrewAction said)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(said);
        return said with
        {
            Kind = ActionKind.Ticked,
            Step = step.Key,
            Stage = step.Stage,
            Item = item.Key,
            Lot = item.Lot,
            What = said.What.Length > 0 ? said.What : $"{item.Amount} {item.What}",
            Mass = item.Kilograms is { } kilograms ? Mass.FromKilograms(kilograms) : null,
        };
    }

    private async Task<string> FreeNameAsync(string wanted, CancellationToken cancellation) =>
        FreeName.Of(wanted, (await book.Gyles.ListAsync(cancellation)).Select(gyle => gyle.Name));

    private async Task<(Guid? Id, Kit Kit)> KitAsync(Guid? id, CancellationToken cancellation)
    {
        KitInUse inUse = await KitInUse.FindAsync(book, cancellation);
        return id is null || id == inUse.Id ? (inUse.Id, inUse.Kit)
            : await book.Kits.FindAsync(id.Value, cancellation) is { } sheet && KitFile.Read(sheet.Document).Value is { } kit ? (id, kit)
            : throw new ArgumentOutOfRangeException(nameof(id), id, "No such kit in the book, or it cannot be read.");
    }

    private async Task<(string? Text, WaterPlan? Plan)> WaterAsync(Guid recipe, CancellationToken cancellation) =>
        await book.Waters.OfRecipeAsync(recipe, cancellation) is { } sheet && WaterFile.Read(sheet.Document).Value is { } plan ? (sheet.Document, plan) : default;
}

/// <summary>A gyle as it stands: its frozen plan, and its log.</summary>
/// <param name="Line">What the list says of it.</param>
/// <param name="Plan">The plan, as it was frozen.</param>
/// <param name="Log">What was done and read.</param>
public sealed record OpenGyle(GyleLine Line, GylePlan Plan, GyleLog Log)
{
    /// <summary>The portion that the whole brew is.</summary>
    public long Whole => Line.Portions[0].Id;

    /// <summary>When brew day began.</summary>
    public DateTimeOffset Start => Line.Started ?? Plan.Frozen;

    /// <summary>When yeast was pitched; null while it was not.</summary>
    public DateTimeOffset? Pitched => Log.Steps.FirstOrDefault(now => now is { Step.Key: "pitch", State: StepState.Done })?.At;

    /// <summary>What was read, as it was typed.</summary>
    public IReadOnlyList<TakenReading> Taken =>
        [.. Log.Readings.Select(reading => reading.Typed is { } typed ? ReadingsFile.ReadEntry(typed).Reading : null).OfType<TakenReading>()];

    /// <summary>The forecast of today's engine with all that was read; null where this program can no longer read the files of the plan.</summary>
    public BrewForecast? Live() => GyleInputs.Of(Plan)?.Forecast(Plan.Seed, Taken);

    /// <summary>The same once something was read; null before, when nothing has moved.</summary>
    public BrewForecast? Moved() => Taken.Count > 0 ? Live() : null;
}
