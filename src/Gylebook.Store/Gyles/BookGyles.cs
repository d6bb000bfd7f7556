using Gylebook.Gyles;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Kits;
using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>The gyles of the book.</summary>
public sealed class BookGyles
{
    /// <summary>Name of the portion that every gyle starts with.</summary>
    public const string Whole = "whole";

    private readonly BookAccess _access;
    private readonly BookVersions _versions;

    internal BookGyles(BookAccess access, BookVersions versions) => (_access, _versions) = (access, versions);

    /// <summary>The gyles of the book, the one last touched first.</summary>
    public Task<List<GyleLine>> ListAsync(CancellationToken cancellation = default) =>
        LinesAsync(gyles => gyles.Where(g => g.DeletedTicks == null).OrderByDescending(g => g.UpdatedTicks), cancellation);

    /// <summary>The gyles of that name, whatever its case and accents, or of that number; where none is, those whose names begin so. The one last touched first.</summary>
    public async Task<IReadOnlyList<GyleLine>> FindAsync(string called, CancellationToken cancellation = default)
    {
        string folded = NameSearch.Fold(called);
        List<GyleLine> all = await ListAsync(cancellation);
        return all.FindAll(gyle => gyle.Id.ToString() == called || NameSearch.Fold(gyle.Name) == folded) is { Count: > 0 } exact
            ? exact
            : all.FindAll(gyle => NameSearch.Fold(gyle.Name).StartsWith(folded, StringComparison.Ordinal));
    }

    /// <summary>One gyle; null when there is none.</summary>
    public async Task<GyleLine?> FindAsync(Guid gyleId, CancellationToken cancellation = default) =>
        (await LinesAsync(gyles => gyles.Where(g => g.Id == gyleId), cancellation)).SingleOrDefault();

    /// <summary>Means to brew a recipe. Nothing is frozen yet.</summary>
    public async Task<Guid> PlanAsync(
        Guid recipeId,
        string name,
        Guid? kitId = null,
        DateTimeOffset? planned = null,
        bool isDemo = false,
        CancellationToken cancellation = default) =>
        (await PlanAsync(new GyleWish(recipeId, name) { KitId = kitId, Planned = planned, IsDemo = isDemo }, cancellation)).Gyle!.Value;

    /// <summary>Means to brew a recipe, in vessels that are free on its days. Nothing is frozen yet.</summary>
    /// <returns>The gyle; none, and who has its vessels, where others have them. Nothing is in the book then.</returns>
    public async Task<(Guid? Gyle, IReadOnlyList<VesselClash> Clashes)> PlanAsync(GyleWish wish, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentException.ThrowIfNullOrWhiteSpace(wish.Name);
        DateTimeOffset now = _access.Now;
        var gyle = new GyleRow
        {
            Id = Guid.CreateVersion7(now),
            Name = wish.Name.Trim(),
            RecipeId = wish.RecipeId,
            IsDemo = wish.IsDemo,
        };
        return await ArrangeAsync(gyle.Id, wish, context => Task.FromResult(context.Gyles.Add(gyle).Entity), cancellation) is { Count: > 0 } clashes ? (null, clashes) : (gyle.Id, []);
    }

    /// <summary>Plans a gyle anew that has not started: its name, kit, day and vessels are those of the wish.</summary>
    /// <returns>Who has the vessels it wants; where anybody has, nothing is changed.</returns>
    public Task<IReadOnlyList<VesselClash>> ArrangeAsync(Guid gyleId, GyleWish wish, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return ArrangeAsync(gyleId, wish, context => UnstartedAsync(context, gyleId, cancellation), cancellation);
    }

    /// <summary>Starts a planned gyle: cuts the version, freezes the plan, pours the first portion. All of it, or nothing.</summary>
    /// <param name="gyleId">Which gyle.</param>
    /// <param name="freeze">Writes the plan document for the version that was cut; the book is held meanwhile.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task<NumberedVersion> StartAsync(
        Guid gyleId, Func<NumberedVersion, string> freeze, CancellationToken cancellation = default)
    {
        NumberedVersion version = await _access.WriteAsync(
            async context =>
            {
                GyleRow gyle = await UnstartedAsync(context, gyleId, cancellation);
                NumberedVersion cut = await _versions.CutAsync(context, gyle.RecipeId, CutReason.Gyle, gyle.Name, cancellation);
                string document = freeze(cut);
                DocumentText.Check(document, DocumentText.Plan);
                context.Plans.Add(new PlanRow { GyleId = gyleId, Document = document, FrozenTicks = _access.Now });
                context.Portions.Add(Portion(gyleId, Whole, 1, null));
                gyle.VersionNumber = cut.Number;
                gyle.Status = GyleStatus.Brewing;
                gyle.StartedTicks = gyle.UpdatedTicks = _access.Now;
                return cut;
            },
            cancellation);
        _access.Changes.Tell(new BookChange(BookNoun.Recipe, version.OwnerId, 0, null));
        Tell(gyleId);
        return version;
    }

    /// <summary>Gives portions logs of their own; one that has one already keeps it, with its new share.</summary>
    /// <param name="gyleId">Which gyle.</param>
    /// <param name="portions">Names and shares, each share above 0 and at most 1.</param>
    /// <param name="fromStage">The stage from which on they stand on their own.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task DivideAsync(Guid gyleId, IReadOnlyList<(string Name, double Share)> portions, string fromStage, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(portions);
        foreach ((string name, double share) in portions)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(name);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
        }

        if (portions.Count == 0)
        {
            return;
        }

        await _access.WriteAsync(
            async context =>
            {
                // The first is the whole, whatever a portion may be called.
                List<PortionRow> known = await context.Portions.Where(p => p.GyleId == gyleId).OrderBy(p => p.Id).Skip(1).ToListAsync(cancellation);
                foreach ((string name, double share) in portions)
                {
                    if (known.Find(portion => portion.Name == name.Trim()) is { } row)
                    {
                        (row.Share, row.FromStage) = (share, fromStage);
                    }
                    else
                    {
                        context.Portions.Add(Portion(gyleId, name.Trim(), share, fromStage));
                    }
                }

                return true;
            },
            cancellation);
        Tell(gyleId);
    }

    /// <summary>The plan as it was frozen; null until the gyle starts.</summary>
    public Task<string?> PlanDocumentAsync(Guid gyleId, CancellationToken cancellation = default) =>
        _access.ReadAsync(
            context => context.Plans.Where(p => p.GyleId == gyleId).Select(p => p.Document).SingleOrDefaultAsync(cancellation),
            cancellation);

    /// <summary>Moves a gyle on. Packaged, it is out of its fermenter; finished or poured away, out of all its vessels.</summary>
    public Task SetStatusAsync(Guid gyleId, GyleStatus status, CancellationToken cancellation = default) =>
        ChangeAsync(
            gyleId,
            async (context, gyle) =>
            {
                gyle.Status = status;
                if (status == GyleStatus.Packaged)
                {
                    await GyleVessels.PackageOnAsync(context, gyleId, _access.Today, cancellation);
                }

                if (status >= GyleStatus.Packaged)
                {
                    await GyleVessels.EmptyAsync(context, gyleId, stay => stay.Kind == VesselKind.Fermenter || status > GyleStatus.Packaged, _access.Today, cancellation);
                }
            },
            cancellation);

    /// <summary>Moves a gyle on, or back, as its log says; its vessels go with it.</summary>
    /// <param name="gyleId">Which gyle.</param>
    /// <param name="follow">Where it stands by all that was done, and the day on which it will be packaged; the book is held meanwhile.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public async Task FollowAsync(
        Guid gyleId, Func<GyleStatus, IReadOnlyList<BrewAction>, (GyleStatus Status, DateOnly? Packaged)> follow, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(follow);
        bool isMoved = await _access.WriteAsync(
            async context =>
            {
                GyleRow gyle = await RowAsync(context, gyleId, cancellation);
                List<ActionRow> rows = await context.Actions.AsNoTracking()
                    .Where(a => context.Portions.Any(p => p.GyleId == gyleId && p.Id == a.PortionId))
                    .OrderBy(a => a.AtTicks).ThenBy(a => a.Id).ToListAsync(cancellation);
                List<PortionRow> portions = await context.Portions.AsNoTracking().Where(p => p.GyleId == gyleId).OrderBy(p => p.Id).ToListAsync(cancellation);
                (GyleStatus status, DateOnly? packaged) = follow(gyle.Status, rows.ConvertAll(row => BookReadings.Show(row).Entry with { Portion = portions.Find(portion => portion.Id == row.PortionId && portion != portions[0])?.Name }));
                if (status == gyle.Status)
                {
                    return false;
                }

                gyle.Status = status;
                gyle.UpdatedTicks = _access.Now;
                await GyleVessels.PackageOnAsync(context, gyleId, packaged, cancellation);
                return true;
            },
            cancellation);
        if (isMoved)
        {
            Tell(gyleId);
        }
    }

    /// <summary>Who has which vessel from today on, the first first.</summary>
    public Task<List<VesselHold>> VesselsAsync(CancellationToken cancellation = default) =>
        _access.ReadAsync(context => GyleVessels.HeldAsync(context, null, _access.Today, cancellation), cancellation);

    /// <summary>A vessel is empty from today on; one that was only planned is given up.</summary>
    public Task EmptyAsync(Guid gyleId, VesselKind kind, string vessel, CancellationToken cancellation = default) =>
        ChangeAsync(gyleId, (context, _) => GyleVessels.EmptyAsync(context, gyleId, stay => stay.Kind == kind && stay.Vessel == vessel, _access.Today, cancellation), cancellation);

    /// <summary>Puts a gyle into the bin, with its plan and readings; it can come back.</summary>
    public Task DeleteAsync(Guid gyleId, CancellationToken cancellation = default) =>
        ChangeAsync(gyleId, (_, gyle) => Task.FromResult(gyle.DeletedTicks = _access.Now), cancellation);

    /// <summary>Takes a gyle out of the bin.</summary>
    public Task RestoreAsync(Guid gyleId, CancellationToken cancellation = default) =>
        ChangeAsync(gyleId, (_, gyle) => Task.FromResult(gyle.DeletedTicks = null), cancellation);

    private async Task<IReadOnlyList<VesselClash>> ArrangeAsync(Guid gyleId, GyleWish wish, Func<BookContext, Task<GyleRow>> which, CancellationToken cancellation)
    {
        IReadOnlyList<VesselClash> clashes = await _access.WriteAsync<IReadOnlyList<VesselClash>>(
            async context =>
            {
                List<VesselHold> held = wish.Stays.Count == 0 ? [] : await GyleVessels.HeldAsync(context, gyleId, _access.Today, cancellation);
                if (VesselClash.Of(wish.Stays, held, _access.Today) is { Count: > 0 } taken)
                {
                    return taken;
                }

                GyleRow gyle = await which(context);
                (gyle.Name, gyle.KitId, gyle.PlannedTicks, gyle.UpdatedTicks) = (wish.Name.Trim(), wish.KitId, wish.Planned, _access.Now);
                await GyleVessels.PutAsync(context, gyleId, wish.Stays, cancellation);
                return [];
            },
            cancellation);
        if (clashes.Count == 0)
        {
            Tell(gyleId);
        }

        return clashes;
    }

    private async Task ChangeAsync(Guid gyleId, Func<BookContext, GyleRow, Task> change, CancellationToken cancellation)
    {
        await _access.WriteAsync(
            async context =>
            {
                GyleRow gyle = await RowAsync(context, gyleId, cancellation);
                await change(context, gyle);
                gyle.UpdatedTicks = _access.Now;
                return true;
            },
            cancellation);
        Tell(gyleId);
    }

    private void Tell(Guid gyleId) => _access.Changes.Tell(new BookChange(BookNoun.Gyle, gyleId, 0, null));

    private static PortionRow Portion(Guid gyleId, string name, double share, string? fromStage) => new()
    {
        GyleId = gyleId,
        Name = name,
        Share = share,
        FromStage = fromStage,
    };

    private static async Task<GyleRow> RowAsync(BookContext context, Guid gyleId, CancellationToken cancellation) =>
        await context.Gyles.SingleOrDefaultAsync(g => g.Id == gyleId, cancellation)
        ?? throw new ArgumentOutOfRangeException(nameof(gyleId), gyleId, "No such gyle in the book.");

    private static async Task<GyleRow> UnstartedAsync(BookContext context, Guid gyleId, CancellationToken cancellation) =>
        await RowAsync(context, gyleId, cancellation) is { Status: GyleStatus.Planned } gyle ? gyle
        : throw new ArgumentOutOfRangeException(nameof(gyleId), gyleId, "The gyle has started already.");

    private Task<List<GyleLine>> LinesAsync(
        Func<IQueryable<GyleRow>, IQueryable<GyleRow>> choose, CancellationToken cancellation) =>
        _access.ReadAsync(
            context => choose(context.Gyles)
                .Select(g => new GyleLine(
                    g.Id,
                    g.Name,
                    g.RecipeId,
                    g.VersionNumber,
                    g.KitId,
                    g.Status,
                    g.PlannedTicks,
                    g.StartedTicks,
                    g.UpdatedTicks,
                    g.IsDemo,
                    g.Portions
                        .OrderBy(p => p.Id)
                        .Select(p => new GylePortion(p.Id, p.Name, p.Share, p.FromStage))
                        .ToList(),
                    g.Stays
                        .OrderBy(s => s.Id)
                        .Select(s => new VesselStay(s.Kind, s.Vessel, s.FromDay, s.UntilDay))
                        .ToList()))
                .ToListAsync(cancellation),
            cancellation);
}
