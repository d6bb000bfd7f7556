using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Cellar;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Lots;
using Gylebook.Store;
using Gylebook.Web.Features.Larders;

namespace Gylebook.Web.Features.Gyles.Cellar;

/// <summary>Yeast taken out of a fermenter into the larder, as pages and terminal work with it.</summary>
/// <param name="desk">The gyles.</param>
/// <param name="clock">The time.</param>
public sealed class HarvestDesk(GyleDesk desk, TimeProvider clock)
{
    /// <summary>Today.</summary>
    public DateOnly Today => DayOf(clock.GetUtcNow());

    /// <summary>Where the clock hangs.</summary>
    public TimeZoneInfo Zone => clock.LocalTimeZone;

    /// <summary>What was taken out so far and not taken back, in its order.</summary>
    public static IReadOnlyList<BrewAction> Jars(OpenGyle gyle)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        return [.. gyle.Log.Actions.Where(action => action is { Kind: ActionKind.Harvested, EntryId: not null, Lot: not null })];
    }

    /// <summary>Writes a jar of yeast into the log, and with it into the larder.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="outlook">What is in its fermenter.</param>
    /// <param name="typed">The jar, as it was typed.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>The entry; none, and why, where the jar cannot be so. Nothing is in the book then.</returns>
    public async Task<(BrewAction? Entry, IReadOnlyList<Finding> Findings)> HarvestAsync(OpenGyle gyle, HarvestOutlook outlook, TypedHarvest typed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(outlook);
        ArgumentNullException.ThrowIfNull(typed);
        if (WrongDay(gyle, typed.Day) is { } wrong)
        {
            return (null, [wrong]);
        }

        HarvestableYeast[] meant = [.. outlook.Yeasts.Where(yeast => typed.Of.Trim().Length == 0 || string.Equals(yeast.Name, typed.Of.Trim(), StringComparison.OrdinalIgnoreCase))];
        if (meant is not [{ } yeast])
        {
            string names = string.Join(", ", outlook.Yeasts.Select(one => one.Name));
            return (null, [new("harvest.yeast", Severity.Error, "of", $"{(typed.Of.Trim() is { Length: > 0 } of ? of : "unsaid")}; must be one of {names}", typed.Of, names)]);
        }

        YeastSheet sheet = await SheetAsync(yeast, cancellation);
        string called = typed.Called.Trim() is { Length: > 0 } own ? own : FreeName.Of(gyle.Line.Name, sheet.Lots.Select(lot => lot.Name));
        if (sheet.Lots.Any(lot => string.Equals(lot.Name, called, StringComparison.OrdinalIgnoreCase)))
        {
            return (null, [new("harvest.called", Severity.Error, "called", $"{called}; another lot of {sheet.Name} has that name, so a recipe could not tell them apart", called, "a name of its own")]);
        }

        (string? text, IReadOnlyList<Finding> findings) = typed.Written(sheet, called, new YeastHarvest { Day = typed.Day, From = gyle.Line.Name, Generation = yeast.Generation, MayContain = outlook.MayContain });
        return text is null ? (null, findings) : (await WriteAsync(gyle, typed, sheet, called, text, cancellation), findings);
    }

    /// <summary>Without a mass: an entry with a lot and a mass is one that uses the lot up.</summary>
    private async Task<BrewAction> WriteAsync(OpenGyle gyle, TypedHarvest typed, YeastSheet sheet, string called, string text, CancellationToken cancellation)
    {
        DateTimeOffset now = clock.GetUtcNow();
        BrewAction entry = new()
        {
            At = typed.Day == Today ? now : Noon(typed.Day), EntryId = Guid.CreateVersion7(now), Kind = ActionKind.Harvested, Stage = "ferment",
            What = $"took out {typed.Amount.Trim()} of yeast, lot {called} of {sheet.Name}", Lot = LotKey.Of(sheet, new Lot<YeastFigures> { Name = called }), Detail = text,
        };
        await desk.DoAsync(gyle, [entry], cancellation);
        return entry;
    }

    private Finding? WrongDay(OpenGyle gyle, DateOnly day)
    {
        DateOnly? pitched = gyle.Pitched is { } at ? DayOf(at) : null;
        string limit = pitched is { } first ? $"from the pitch, {Text(first)}, to today, {Text(Today)}" : "after the pitch";
        return pitched is null ? new("harvest.pitch", Severity.Error, "on", "no yeast was pitched yet", Text(day), limit)
            : day < pitched || day > Today ? new("harvest.day", Severity.Error, "on", $"{Text(day)}; must be {limit}", Text(day), limit)
            : null;
    }

    /// <summary>The sheet it was pitched from; else the one sheet like it that has harvested lots, or the one sheet like it; else a new one.</summary>
    private async Task<YeastSheet> SheetAsync(HarvestableYeast yeast, CancellationToken cancellation)
    {
        YeastSheet[] all = [.. (await OwnLarder.OfAsync(desk.Book, cancellation)).Sheets.OfType<YeastSheet>()];
        YeastSheet[] alike = [.. all.Where(sheet => YeastStyles.Find(sheet.Like).Match?.Id == yeast.Like)];
        YeastSheet[] known = [.. alike.Where(sheet => sheet.Lots.Any(lot => lot.Assay?.Harvest is not null))];
        if (all.FirstOrDefault(sheet => sheet.Id == yeast.SheetId) is { } own)
        {
            return own;
        }

        if (yeast.SheetId is null && (known.Length == 1 ? known : alike) is [{ } one])
        {
            return one;
        }

        List<Sheet> others = await desk.Book.Larder.ListAsync(cancellation: cancellation);
        return NewSheet.Yeast(yeast.Like, FreeName.Of(yeast.Name, others), others);
    }

    private DateOnly DayOf(DateTimeOffset moment) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, clock.LocalTimeZone).DateTime);

    private DateTimeOffset Noon(DateOnly day)
    {
        DateTime noon = day.ToDateTime(new TimeOnly(12, 0));
        return new DateTimeOffset(noon, clock.LocalTimeZone.GetUtcOffset(noon));
    }

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
