using Gylebook.Engine.Parameters;
using Gylebook.Science.Mashing;

namespace Gylebook.Engine.Stages;

/// <summary>A rest of a mash.</summary>
/// <param name="Celsius">How warm.</param>
/// <param name="Minutes">How long.</param>
public readonly record struct RestStep(double Celsius, double Minutes);

/// <summary>Enzymes at the end of a rest, as shares of what the grist brought.</summary>
/// <param name="Alpha">Alpha-amylase.</param>
/// <param name="Beta">Beta-amylase.</param>
public readonly record struct EnzymesLeft(double Alpha, double Beta);

/// <summary>What a row of rests does to the amylases, and the limit of attenuation that follows.</summary>
/// <remarks>
/// Each rest at its own temperature from end to end; the way from one to the next is not counted. Work counts where barley starch
/// begins to open; the enzyme fades in cooler rests too. The limit is each rest's own, weighed by the work beta-amylase does in it:
/// decision 0013.
/// </remarks>
public sealed class RestCourse
{
    /// <summary>Where no mash is written down, extract is taken to have been mashed like this. Common practice, no source.</summary>
    private const double OrdinaryRest = 66;

    /// <summary>The series of attenuation against temperature is of one rest of an hour.</summary>
    private const double SeriesMinutes = 60;

    private readonly RestStep[] _rests;

    /// <summary>A row of rests.</summary>
    public RestCourse(RestStep[] rests)
    {
        _rests = rests;
        PlannedLimitPercent = LimitPercent(0);
    }

    /// <summary>The rests.</summary>
    public IReadOnlyList<RestStep> Rests => _rests;

    /// <summary>Apparent limit of attenuation of a pale malt's wort, %, with the rests as warm as they were meant.</summary>
    public double PlannedLimitPercent { get; }

    /// <summary>The limit at a draw: its own, moved by what a warmer or cooler mash does.</summary>
    public double LimitPercent(Draw draw)
    {
        double warmer = draw[Known.MashWarmer];
        return warmer == 0
            ? draw[Known.LimitOfAttenuation]
            : Math.Clamp(draw[Known.LimitOfAttenuation] + LimitPercent(warmer) - PlannedLimitPercent, 0, 100);
    }

    /// <summary>The rest in which beta-amylase does most of its work; the warmest when it does none.</summary>
    public double ConvertingCelsius
    {
        get
        {
            IReadOnlyList<double> work = BetaWork();
            int most = Enumerable.Range(0, _rests.Length).OrderByDescending(i => work[i]).ThenByDescending(i => _rests[i].Celsius).FirstOrDefault(-1);
            return most < 0 ? OrdinaryRest : _rests[most].Celsius;
        }
    }

    /// <summary>What is left at each rest's end.</summary>
    public IReadOnlyList<EnzymesLeft> LeftAfter()
    {
        List<EnzymesLeft> all = [];
        EnzymesLeft left = new(1, 1);
        foreach ((double celsius, double minutes) in _rests)
        {
            left = new EnzymesLeft(
                left.Alpha * EnzymeLife.Left(EnzymeLife.AlphaPerMinute(celsius), minutes),
                left.Beta * EnzymeLife.Left(EnzymeLife.BetaPerMinute(celsius), minutes));
            all.Add(left);
        }

        return all;
    }

    /// <summary>Beta-amylase's work in each rest, as minutes at full strength.</summary>
    public IReadOnlyList<double> BetaWork()
    {
        double left = 1;
        return [.. _rests.Select(rest => WorkOf(rest, 0, ref left))];
    }

    /// <summary>All that work over the work of an hour at a temperature.</summary>
    public double ShareOfAnHour(double celsius) =>
        BetaWork().Sum() / EnzymeLife.WorkMinutes(EnzymeLife.BetaPerMinute(celsius), SeriesMinutes);

    private double LimitPercent(double warmer)
    {
        double all = 0, left = 1;
        foreach (RestStep rest in _rests)
        {
            all += WorkOf(rest, warmer, ref left);
        }

        if (!(all > 0))
        {
            return AttenuationLimit.ApparentPercentAt(ConvertingCelsius + warmer);
        }

        double limit = 0;
        left = 1;
        foreach (RestStep rest in _rests)
        {
            limit += WorkOf(rest, warmer, ref left) / all * AttenuationLimit.ApparentPercentAt(rest.Celsius + warmer);
        }

        return limit;
    }

    private static double WorkOf(in RestStep rest, double warmer, ref double left)
    {
        double celsius = rest.Celsius + warmer;
        double rate = EnzymeLife.BetaPerMinute(celsius);
        double work = Gelatinisation.BeginsToOpenAt(Cereal.Barley, celsius) ? left * EnzymeLife.WorkMinutes(rate, rest.Minutes) : 0;
        left *= EnzymeLife.Left(rate, rest.Minutes);
        return work;
    }
}
