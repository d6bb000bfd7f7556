using Gylebook.Forecast.Learning;
using Gylebook.Forecast.Report;
using Gylebook.Gyles;
using Gylebook.Gyles.Packaging;
using Gylebook.Gyles.Portions;
using Gylebook.Gyles.Tasting;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Readings;
using Gylebook.Store;

namespace Gylebook.Web.Features.Gyles.Glass;

/// <summary>A gyle in the glass: tasted, poured, held against its plan, and what it taught.</summary>
/// <param name="Gyle">The gyle.</param>
/// <param name="Held">Its plan beside what was measured.</param>
/// <param name="Tasted">What tasters said.</param>
/// <param name="Compared">What was asked of panels.</param>
/// <param name="Left">What is left of each portion that was filled.</param>
public sealed record OpenGlass(OpenGyle Gyle, IReadOnlyList<HeldNumber> Held, IReadOnlyList<GlassEntry<Tasted>> Tasted, IReadOnlyList<GlassEntry<Compared>> Compared, IReadOnlyList<PortionLeft> Left);

/// <summary>Something that was said of a beer.</summary>
/// <param name="Entry">The entry of the log.</param>
/// <param name="At">When.</param>
/// <param name="Portion">Of which portion; null for the whole.</param>
/// <param name="Age">How long it had been packaged; null where it was not yet.</param>
/// <param name="Said">What.</param>
/// <typeparam name="T">What sort of thing.</typeparam>
public sealed record GlassEntry<T>(Guid Entry, DateTimeOffset At, string? Portion, TimeSpan? Age, T Said);

/// <summary>Beer that was filled, and what is left of it.</summary>
/// <param name="Portion">Of which portion; null for the whole.</param>
/// <param name="Filled">Litres that were filled.</param>
/// <param name="Poured">Litres that left the packages.</param>
/// <param name="IsEmpty">Whether somebody said that nothing is left.</param>
public sealed record PortionLeft(string? Portion, double Filled, double Poured, bool IsEmpty)
{
    /// <summary>Litres that should be left.</summary>
    public double Litres => Math.Max(0, Filled - Poured);
}

/// <summary>Tasting, pouring and learning, as pages and terminal work with them.</summary>
/// <param name="desk">The gyles.</param>
/// <param name="clock">The time.</param>
public sealed class GlassDesk(GyleDesk desk, TimeProvider clock)
{
    /// <summary>The gyle in the glass.</summary>
    public static async Task<OpenGlass> OpenAsync(OpenGyle gyle, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        BrewForecast? live = await Task.Run(gyle.Moved, cancellation);
        return new OpenGlass(
            gyle, HeldNumber.Of(gyle.Plan, gyle.Log, live?.AfterReadings), [.. Said(gyle, ActionKind.Tasted, Tasted.Read)], [.. Said(gyle, ActionKind.Compared, Compared.Read)],
            [.. gyle.Division.Names.Where(portion => GyleProgress.IsPackaged(gyle.Log, portion)).Select(portion => LeftOf(gyle, portion))]);
    }

    private static IEnumerable<GlassEntry<T>> Said<T>(OpenGyle gyle, ActionKind kind, Func<string?, T?> read)
        where T : class =>
        from action in Entries(gyle, kind)
        let said = read(action.Detail)
        where said is not null
        select new GlassEntry<T>(action.EntryId!.Value, action.At, action.Portion, gyle.PackagedOf(action.Portion) is { } packaged && packaged <= action.At ? action.At - packaged : null, said);

    private static PortionLeft LeftOf(OpenGyle gyle, string? portion)
    {
        BrewAction[] own = [.. gyle.Log.ActionsOf(portion)];
        return new(
            portion, own.Where(action => action.Kind == ActionKind.Packaged).SelectMany(action => PackagedDetail.Read(action.Detail) ?? []).Sum(one => one.Litres),
            own.Where(action => action.Kind == ActionKind.Poured).Sum(action => action.Volume?.Litres ?? 0), GyleProgress.IsEmptied(gyle.Log, portion));
    }

    /// <summary>Writes down what a taster said.</summary>
    public Task<int> TasteAsync(OpenGyle gyle, string? portion, Tasted said, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(said);
        return WriteAsync(gyle, portion, ActionKind.Tasted, said.Notes.Length > 0 ? $"{said.Taster}: {said.Notes}" : $"{said.Taster} tasted", said.Write(), cancellation);
    }

    /// <summary>Writes down what a panel answered.</summary>
    /// <exception cref="ArgumentException">It cannot be so.</exception>
    public Task<int> CompareAsync(OpenGyle gyle, string? portion, Compared asked, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return asked.Wrong is { } wrong ? throw new ArgumentException(wrong, nameof(asked))
            : WriteAsync(gyle, portion, ActionKind.Compared, Invariant($"{asked.Name}: {asked.Right} of {asked.Tasters} right"), asked.Write(), cancellation);
    }

    /// <summary>What this gyle and those brewed before on the same kit teach it.</summary>
    /// <returns>Null where the book has no kit of its own for the gyle.</returns>
    public async Task<KitLearning?> TaughtAsync(OpenGyle gyle, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        if (await KitAsync(gyle, cancellation) is not var (_, kit))
        {
            return null;
        }

        List<FinishedGyle> finished = [];
        foreach (GyleLine line in (await desk.Book.Gyles.ListAsync(cancellation)).Where(line => line.KitId == gyle.Line.KitId && (line.Id == gyle.Line.Id || line.Status >= GyleStatus.Packaged)).OrderBy(line => line.Started))
        {
            if (await desk.OpenAsync(line.Id, cancellation) is { Taken.Count: > 0 } other && other.Inputs is { } inputs)
            {
                finished.Add(new FinishedGyle(inputs.Recipe, new BrewReadings { Name = line.Name, Readings = other.Taken }, inputs.Larder));
            }
        }

        return finished.Count == 0 ? null : await Task.Run(() => KitLearning.Of(kit, finished, kit.Name), cancellation);
    }

    /// <summary>Takes a figure into the kit of the book, or leaves it; both are written into the gyle's log.</summary>
    /// <returns>Whether the kit has it now.</returns>
    public async Task<bool> TakeAsync(OpenGyle gyle, KitLearning learning, string figure, bool isTaken, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        ArgumentNullException.ThrowIfNull(learning);
        if (isTaken)
        {
            if (gyle.Line.KitId is not { } id || await desk.Book.Kits.Drafts.FindAsync(id, cancellation) is not { } draft)
            {
                return false;
            }

            string text = KitFile.Write(learning.Accepted([figure], DateOnly.FromDateTime(clock.GetLocalNow().DateTime)));
            if (await desk.Book.Kits.Drafts.SaveAsync(id, draft.Revision, text, $"took {figure} from {gyle.Line.Name}", "glass", cancellation) is not DraftSave.Saved)
            {
                return false;
            }
        }

        await WriteAsync(gyle, null, ActionKind.Taught, isTaken ? $"{figure} taken into the kit" : $"{figure} left as it was", null, cancellation);
        return isTaken;
    }

    /// <summary>Keeps the recipe as it is now as its next version, with why.</summary>
    /// <returns>Null where the recipe is still what the gyle was brewed from.</returns>
    public async Task<NumberedVersion?> NextVersionAsync(OpenGyle gyle, string why, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(gyle);
        return await desk.Book.Drafts.FindAsync(gyle.Line.RecipeId, cancellation) is not { } draft || draft.Document == gyle.Plan.Recipe ? null : await desk.Book.Versions.KeepAsync(gyle.Line.RecipeId, $"after {gyle.Line.Name}: {why.Trim()}", cancellation);
    }

    private async Task<(Guid Id, Kit Kit)?> KitAsync(OpenGyle gyle, CancellationToken cancellation) =>
        gyle.Line.KitId is { } id && await desk.Book.Kits.FindAsync(id, cancellation) is { } sheet && KitFile.Read(sheet.Document).Value is { } kit ? (id, kit) : null;

    private static IEnumerable<BrewAction> Entries(OpenGyle gyle, ActionKind kind) => gyle.Log.Actions.Where(action => action.Kind == kind && action.EntryId is not null);

    private Task<int> WriteAsync(OpenGyle gyle, string? portion, ActionKind kind, string what, string? detail, CancellationToken cancellation)
    {
        DateTimeOffset now = clock.GetUtcNow();
        return desk.DoAsync(gyle, [new BrewAction { At = now, EntryId = Guid.CreateVersion7(now), Kind = kind, Stage = "pour", Portion = portion, What = what, Detail = detail }], cancellation);
    }
}
