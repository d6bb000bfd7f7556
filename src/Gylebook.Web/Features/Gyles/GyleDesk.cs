using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Gyles.Portions;
using Gylebook.Gyles.Vessels;
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
    /// <summary>The book.</summary>
    public Book Book => book;

    /// <summary>What a gyle would be brewed from today, and its plan as it would be frozen; null when there is no such recipe, or the planned gyle has started.</summary>
    public async Task<GyleToBe?> PrepareAsync(GyleOrder order, CancellationToken cancellation = default) =>
        (await LayOutAsync(order, Today, cancellation))?.Reckoned();

    /// <summary>The same without its plan: what it takes is known at once.</summary>
    public Task<GyleToBe?> SketchAsync(GyleOrder order, CancellationToken cancellation = default) => LayOutAsync(order, Today, cancellation);

    /// <summary>What a gyle of a recipe of the book would be brewed from today.</summary>
    public Task<GyleToBe?> PrepareAsync(Guid recipeId, CancellationToken cancellation = default) => PrepareAsync(new GyleOrder(recipeId), cancellation);

    /// <summary>Means to brew on a day: nothing is frozen yet. A gyle that is planned already is planned anew.</summary>
    /// <param name="order">What is asked for.</param>
    /// <param name="day">On which day.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The gyle; none, and why, where it cannot be. Nothing is changed in the book then.</returns>
    public async Task<(GyleLine? Gyle, IReadOnlyList<Finding> Findings)> PlanAsync(GyleOrder order, DateOnly day, CancellationToken cancellation = default)
    {
        if (await LayOutAsync(order, day, cancellation) is not { } gyle)
        {
            return (null, [Gone]);
        }

        List<Finding> findings = [.. gyle.Unread];
        if (day < Today)
        {
            findings.Add(new("gyle.past", Severity.Error, "day", $"{VesselDays.Day(day)}; must be today, {VesselDays.Day(Today)}, or later", VesselDays.Day(day), VesselDays.Day(Today)));
        }

        return (await KeptAsync(gyle, day, NoonOf(day), findings, cancellation) is { } id ? await book.Gyles.FindAsync(id, cancellation) : null, findings);
    }

    /// <summary>Starts a gyle: cuts a version, freezes the plan.</summary>
    /// <param name="order">What is asked for.</param>
    /// <param name="seen">What somebody has looked at: its plan is frozen where nothing has changed since of which it was made. Null to reckon it here.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The gyle; none, and why, where the recipe cannot be brewed as it is, or others have its vessels. Nothing is in the book then.</returns>
    public async Task<(GyleLine? Gyle, IReadOnlyList<Finding> Findings)> StartAsync(GyleOrder order, GyleToBe? seen = null, CancellationToken cancellation = default)
    {
        if ((await LayOutAsync(order, Today, cancellation))?.Reckoned(seen) is not { } gyle)
        {
            return (null, [Gone]);
        }

        List<Finding> findings = [.. gyle.Findings];
        if (gyle.Plan is not { } plan || await KeptAsync(gyle, Today, gyle.Planned?.Planned, findings, cancellation) is not { } id)
        {
            return (null, findings);
        }

        await book.Gyles.StartAsync(id, version => GylePlanFile.Write(PlanOf(version.Document) with { RecipeVersion = version.Number }), cancellation);
        await book.Gyles.DivideAsync(id, [.. (gyle.Recipe?.Portions ?? []).Select(portion => (portion.Name, portion.Share.Value.Ratio))], "cast", cancellation);
        return (await book.Gyles.FindAsync(id, cancellation), findings);

        // Somebody may have typed in another tab meanwhile.
        GylePlan PlanOf(string text) => text == gyle.RecipeText ? plan
            : (gyle with { RecipeText = text }).Reckoned().Plan ?? throw new InvalidOperationException("The recipe was changed while the gyle started, and cannot be brewed as it is now.");
    }

    /// <summary>Starts a gyle of a recipe of the book.</summary>
    /// <param name="recipeId">Which recipe.</param>
    /// <param name="name">What to call it; null for the recipe's name and the day.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public Task<(GyleLine? Gyle, IReadOnlyList<Finding> Findings)> StartAsync(Guid recipeId, string? name = null, CancellationToken cancellation = default) =>
        StartAsync(new GyleOrder(recipeId) { Name = name }, cancellation: cancellation);

    /// <summary>The gyles that are planned of a recipe, the next first.</summary>
    public async Task<IReadOnlyList<GyleLine>> PlannedAsync(Guid recipeId, CancellationToken cancellation = default) =>
        [.. (await book.Gyles.ListAsync(cancellation)).Where(gyle => gyle.RecipeId == recipeId && gyle.Status == GyleStatus.Planned).OrderBy(gyle => gyle.Planned ?? DateTimeOffset.MaxValue)];

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

        long[] portions = [.. line.Portions.Select(portion => portion.Id)];
        List<Logged<GyleReading>> readings = await book.Readings.ListAsync(portions, cancellation);
        List<Logged<BrewAction>> actions = await book.Readings.ActionsAsync(portions, cancellation);
        return new OpenGyle(line, plan, new GyleLog(plan.Steps, actions.ConvertAll(action => action.Entry with { Portion = NameOf(action.PortionId) }), readings.ConvertAll(reading => Named(reading))));

        string? NameOf(long portion) => portion == whole.Id ? null : line.Portions.First(one => one.Id == portion).Name;

        // Readings that were taken before portions had logs of their own say what they are of in their text alone.
        GyleReading Named(Logged<GyleReading> reading) => reading.Entry with
        {
            Portion = NameOf(reading.PortionId) ?? (reading.Entry.Typed is { } typed && typed.Contains("\"portion\"", StringComparison.Ordinal) ? ReadingsFile.ReadEntry(typed).Reading?.Portion : null),
        };
    }

    /// <summary>Puts readings into a gyle's log.</summary>
    public Task<int> ReadAsync(OpenGyle gyle, IEnumerable<TakenReading> readings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        DateTimeOffset now = clock.GetUtcNow();
        return KeepAsync(gyle, [.. readings.Select(taken => EntryOf(taken, now, Guid.CreateVersion7(now)))], cancellation);
    }

    /// <summary>Puts readings that have a number and a time already into a gyle's log; one that is there is passed over.</summary>
    public Task<int> KeepAsync(OpenGyle gyle, IReadOnlyCollection<GyleReading> readings, CancellationToken cancellation = default) =>
        AddAsync(gyle, readings.GroupBy(reading => reading.Portion), (log, own) => book.Readings.AddAsync(log, own, cancellation), cancellation);

    /// <summary>Puts actions into a gyle's log.</summary>
    public async Task<int> DoAsync(OpenGyle gyle, IReadOnlyCollection<BrewAction> actions, CancellationToken cancellation = default)
    {
        int added = await AddAsync(gyle, actions.GroupBy(action => action.Portion), (log, own) => book.Readings.AddAsync(log, own, cancellation), cancellation);

        // Also where all were in the book already: a start that was cut short is made up for by whoever sends them again.
        if (actions.Any(GyleProgress.MayMove))
        {
            await book.Gyles.FollowAsync(gyle.Line.Id, Follow, cancellation);
        }

        if (actions.Any(HarvestedLots.MayChange))
        {
            await HarvestedLots.FollowAsync(book, (await book.Readings.ActionsAsync(gyle.LogsOf(null), cancellation)).ConvertAll(action => action.Entry), actions, cancellation);
        }

        return added;

        (GyleStatus Status, DateOnly? Packaged) Follow(GyleStatus status, IReadOnlyList<BrewAction> log)
        {
            GyleLog now = new(gyle.Plan.Steps, log, []);
            return (GyleProgress.Of(status, now, Division.Of(gyle.Plan, now)), GyleInputs.Of(gyle.Plan)?.Recipe is { } recipe ? PackagedOn(recipe, now.Pitched ?? gyle.Start) : null);
        }
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
            Portion = taken.Portion,
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

    private async Task<int> AddAsync<T>(OpenGyle gyle, IEnumerable<IGrouping<string?, T>> byPortion, Func<long, T[], Task<int>> add, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        int added = 0;
        foreach (IGrouping<string?, T> own in byPortion)
        {
            added += await add(await LogOfAsync(gyle, own.Key, cancellation), [.. own]);
        }

        return added;
    }

    /// <summary>The log of a portion in the book, made where it has none yet; that of the whole for a portion there is not.</summary>
    private async Task<long> LogOfAsync(OpenGyle gyle, string? portion, CancellationToken cancellation)
    {
        if (gyle.Division.Find(portion) is not { } known || gyle.OwnLogOf(portion) is not null)
        {
            return gyle.OwnLogOf(portion) ?? gyle.Whole;
        }

        await book.Gyles.DivideAsync(gyle.Line.Id, [(known.Name, known.Share)], "cast", cancellation);
        return (await book.Gyles.FindAsync(gyle.Line.Id, cancellation))!.Portions.Skip(1).First(one => one.Name == portion).Id;
    }

    private static Finding Gone { get; } = new("gyle.gone", Severity.Error, "gyle", "there is no such recipe in the book, or the planned gyle has started already");

    private DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private DateOnly DayOf(DateTimeOffset moment) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, clock.LocalTimeZone).DateTime);

    /// <summary>A day as the moment by which the book keeps it: its noon, so that it is that day in the next time zones, too.</summary>
    private DateTimeOffset NoonOf(DateOnly day)
    {
        DateTime noon = day.ToDateTime(new TimeOnly(12, 0));
        return new DateTimeOffset(noon, clock.LocalTimeZone.GetUtcOffset(noon));
    }

    private DateOnly? PackagedOn(Recipe recipe, DateTimeOffset pitched) => GyleDays.ToPackage(recipe) is { } days ? DayOf(pitched.AddDays(days)) : null;

    private async Task<GyleToBe?> LayOutAsync(GyleOrder order, DateOnly day, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(order);
        GyleLine? planned = order.GyleId is { } id ? await book.Gyles.FindAsync(id, cancellation) : null;
        if (await book.Files.FindAsync("recipe", order.RecipeId, cancellation) is not { } file
            || (order.GyleId is not null && planned is not { Status: GyleStatus.Planned }) || (planned is not null && planned.RecipeId != order.RecipeId))
        {
            return null;
        }

        (Guid? kept, Kit kit) = await KitAsync(order.KitId ?? planned?.KitId, cancellation);
        (string? waterText, WaterPlan? water) = await WaterAsync(order.RecipeId, cancellation);
        DateTimeOffset now = clock.GetUtcNow();
        return new GyleToBe
        {
            Order = order, Planned = planned, Name = await NameAsync(order, planned, file.Name, day, cancellation), RecipeText = file.Text, KitId = kept, Kit = kit,
            Larder = (await OwnLarder.OfAsync(book, cancellation)).On(GyleInputs.DayOf(now)), WaterText = waterText, Water = water, Now = now,
        };
    }

    /// <summary>A name that no other gyle has. What was called by the day for which it was planned is called by the day on which it is brewed.</summary>
    private async Task<string> NameAsync(GyleOrder order, GyleLine? planned, string recipe, DateOnly day, CancellationToken cancellation)
    {
        bool isOwn = planned is not null && !(planned.Planned is { } was && planned.Name.StartsWith(ByDay(DayOf(was)), StringComparison.Ordinal));
        return FreeName.Of(order.Name ?? (isOwn ? planned!.Name : ByDay(day)), (await book.Gyles.ListAsync(cancellation)).Where(gyle => gyle.Id != planned?.Id).Select(gyle => gyle.Name));

        string ByDay(DateOnly on) => $"{recipe}, {VesselDays.Day(on)}";
    }

    /// <summary>Keeps a gyle as planned, with its vessels; null, and why, where that cannot be.</summary>
    private async Task<Guid?> KeptAsync(GyleToBe gyle, DateOnly day, DateTimeOffset? planned, List<Finding> findings, CancellationToken cancellation)
    {
        if (gyle.Recipe is not { } recipe)
        {
            return null;
        }

        VesselPlan vessels = gyle.Vessels.In(gyle.Kit, recipe, findings);
        if (findings.Any(finding => finding.Code.StartsWith("vessel.", StringComparison.Ordinal) || finding.Code == "gyle.past"))
        {
            return null;
        }

        GyleWish wish = new(gyle.Order.RecipeId, gyle.Name)
        {
            KitId = gyle.KitId, Planned = planned, IsDemo = gyle.Order.IsDemo, Stays = [.. vessels.Stays(day, PackagedOn(recipe, NoonOf(day)))],
        };
        (Guid? id, IReadOnlyList<VesselClash> clashes) = gyle.Planned is { Id: var known }
            ? (known, await book.Gyles.ArrangeAsync(known, wish, cancellation)) : await book.Gyles.PlanAsync(wish, cancellation);
        findings.AddRange(clashes.Select(clash => new Finding("vessel.taken", Severity.Error, clash.Wanted.Kind == VesselKind.Keg ? "keg" : "fermenter", clash.Sentence, clash.Wanted.Vessel)));
        return clashes.Count > 0 ? null : id;
    }

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
