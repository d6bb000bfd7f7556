using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Pictures;

namespace Gylebook.Web.Features.Gyles;

/// <summary>A headline number of a gyle: as it was planned, and as it is expected now.</summary>
/// <param name="Name">Its stable name.</param>
/// <param name="Title">As people say it.</param>
/// <param name="Planned">As the frozen plan says.</param>
/// <param name="Now">As today's engine says, with all that was read.</param>
/// <param name="Ends">Low to high: now, or as planned while nothing was read.</param>
internal sealed record GyleNumber(string Name, string Title, string Planned, string Now, string Ends)
{
    private static readonly (string Name, string Title, Func<Shown, double, string> Told)[] All =
    [
        ("packagedLitres", "beer", static (shown, value) => shown.Litres(value)),
        ("alcoholByVolume", "alcohol", static (shown, value) => shown.Percent(value)),
        ("originalGravity", "original gravity", static (shown, value) => shown.Gravity(value)),
        ("finalGravity", "final gravity", static (shown, value) => shown.Gravity(value)),
        ("bitterness", "bitterness", static (shown, value) => shown.Ibu(value)),
        ("colourSrm", "colour", static (shown, value) => shown.Srm(value)),
        ("mashPh", "pH of the mash", static (shown, value) => $"pH {shown.Number(value, 2)}"),
        ("copperUpLitres", "wort at copper-up", static (shown, value) => shown.Litres(value)),
        ("castLitres", "wort in the fermenter", static (shown, value) => shown.Litres(value)),
    ];

    /// <summary>A value of such a number in the reader's units; null for one that is not among them.</summary>
    public static string? Told(string name, double value, Shown shown) => All.FirstOrDefault(row => row.Name == name).Told?.Invoke(shown, value);

    /// <summary>Those that somebody knows.</summary>
    public static IReadOnlyList<GyleNumber> Of(GylePlan plan, BrewForecast? live, Shown shown)
    {
        FrozenForecast frozen = FrozenForecast.Of(plan);
        return [.. All.Select(row => Row(row, frozen, live?.Headline.FirstOrDefault(headline => headline.Name == row.Name)?.Band, shown)).Where(row => row is not { Planned: "–", Now: "" })];
    }

    private static GyleNumber Row((string Name, string Title, Func<Shown, double, string> Told) row, FrozenForecast frozen, Engine.Readouts.Band? now, Shown shown)
    {
        string Known(double? value) => value is { } known ? row.Told(shown, known) : "–";
        (double? low, double? high) = now is { } band ? (band.Low, band.High) : (frozen.End(row.Name, "low"), frozen.End(row.Name, "high"));
        return new GyleNumber(row.Name, row.Title, Known(frozen.Likely(row.Name)), now is null ? "" : Known(now.Likely), low is null ? "" : $"{Known(low)} to {Known(high)}");
    }
}
