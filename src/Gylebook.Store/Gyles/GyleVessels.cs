using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Kits;
using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;

namespace Gylebook.Store;

/// <summary>Which gyle has which vessel, within an operation on the book.</summary>
internal static class GyleVessels
{
    /// <summary>What others have from a day on, the first first.</summary>
    /// <param name="context">The rows.</param>
    /// <param name="but">The gyle that asks; null for nobody.</param>
    /// <param name="today">The day.</param>
    /// <param name="cancellation">Stops waiting.</param>
    public static async Task<List<VesselHold>> HeldAsync(BookContext context, Guid? but, DateOnly today, CancellationToken cancellation)
    {
        List<VesselHold> all = await (
            from stay in context.Stays.AsNoTracking()
            join gyle in context.Gyles.AsNoTracking() on stay.GyleId equals gyle.Id
            where gyle.DeletedTicks == null && gyle.Id != but
            orderby stay.FromDay, stay.Id
            select new VesselHold(gyle.Id, gyle.Name, gyle.Status, new VesselStay(stay.Kind, stay.Vessel, stay.FromDay, stay.UntilDay))).ToListAsync(cancellation);
        return all.FindAll(hold => hold.IsAhead(today));
    }

    /// <summary>Gives a gyle these vessels and no others.</summary>
    public static async Task PutAsync(BookContext context, Guid gyleId, IReadOnlyList<VesselStay> stays, CancellationToken cancellation)
    {
        context.Stays.RemoveRange(await OfAsync(context, gyleId, cancellation));
        context.Stays.AddRange(stays.Select(stay => new StayRow { GyleId = gyleId, Kind = stay.Kind, Vessel = stay.Vessel, FromDay = stay.From, UntilDay = stay.Until }));
    }

    /// <summary>Moves the day on which a gyle goes from its fermenter into its keg.</summary>
    public static async Task PackageOnAsync(BookContext context, Guid gyleId, DateOnly? packaged, CancellationToken cancellation)
    {
        foreach (StayRow stay in await OfAsync(context, gyleId, cancellation))
        {
            if (stay.Kind == VesselKind.Fermenter)
            {
                stay.UntilDay = packaged ?? stay.UntilDay;
            }
            else
            {
                stay.FromDay = packaged ?? stay.FromDay;
            }
        }
    }

    /// <summary>Ends those days today; of those that did not begin before, nothing is left.</summary>
    public static async Task EmptyAsync(BookContext context, Guid gyleId, Func<StayRow, bool> which, DateOnly today, CancellationToken cancellation)
    {
        foreach (StayRow stay in (await OfAsync(context, gyleId, cancellation)).Where(which))
        {
            if (stay.FromDay >= today)
            {
                context.Stays.Remove(stay);
            }
            else
            {
                stay.UntilDay = today;
            }
        }
    }

    private static Task<List<StayRow>> OfAsync(BookContext context, Guid gyleId, CancellationToken cancellation) =>
        context.Stays.Where(stay => stay.GyleId == gyleId).ToListAsync(cancellation);
}
