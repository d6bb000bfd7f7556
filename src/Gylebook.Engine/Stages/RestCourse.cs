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

/// <summary>What a row of rests does to starch and amylases, and the limit of attenuation that follows.</summary>
/// <remarks>
/// Each rest at its own temperature from end to end; the way from one to the next is not counted. Work of beta-amylase counts where
/// barley starch begins to open; the enzyme fades in cooler rests too. Each rest makes its own limit of so much of the wort as it did
/// of a half-hour's work there, in their order, until all is done: decision 0020.
/// </remarks>
public sealed class RestCourse
{
    /// <summary>Where no mash is written down, extract is taken to have been mashed like this. Common practice, no source.</summary>
    private const double OrdinaryRest = 66;

    /// <summary>The series of attenuation against temperature are of one rest of an hour.</summary>
    private const double SeriesMinutes = 60;

    /// <summary>A rest of this is done: nobody within our reach has printed that a longer one changes the limit.</summary>
    private const double DoneMinutes = 30;

    /// <summary>The hottest mash in print that still made wort, °C: what alpha-amylase does there in an hour is enough for all the starch.</summary>
    private const double HottestMash = 80;

    private static readonly double EnoughAlphaMinutes =
        EnzymeLife.WorkMinutes(EnzymeLife.AlphaPerMinute(HottestMash), SeriesMinutes);

    private readonly RestStep[] _rests;
    private readonly double _plannedTowards;
    private readonly double _plannedConverted;

    /// <summary>A row of rests.</summary>
    /// <param name="rests">The rests, in their order.</param>
    /// <param name="towardsPlateau">Where <see cref="Known.TowardsPlateau"/> starts, 0 to 1.</param>
    public RestCourse(RestStep[] rests, double towardsPlateau)
    {
        _rests = rests;
        _plannedTowards = towardsPlateau;
        PlannedLimitPercent = LimitPercent(0, towardsPlateau);
        _plannedConverted = OpenShare(0) * AlphaShare(0);
    }

    /// <summary>The rests.</summary>
    public IReadOnlyList<RestStep> Rests => _rests;

    /// <summary>Apparent limit of attenuation of a pale malt's wort, %, with the rests as warm as they were meant.</summary>
    public double PlannedLimitPercent { get; }

    /// <summary>The limit at a draw: its own, moved by what a warmer or cooler mash does, and by which series is believed.</summary>
    public double LimitPercent(Draw draw)
    {
        double warmer = draw[Known.MashWarmer], towards = draw[Known.TowardsPlateau];
        return warmer == 0 && towards == _plannedTowards
            ? draw[Known.LimitOfAttenuation]
            : Math.Clamp(draw[Known.LimitOfAttenuation] + LimitPercent(warmer, towards) - PlannedLimitPercent, 0, 100);
    }

    /// <summary>Share of the open starch that the rests have time and heat to convert, at most; 1 where no mash is written down.</summary>
    public double ConvertedShare(Draw draw) =>
        draw[Known.MashWarmer] is not 0 and var warmer ? OpenShare(warmer) * AlphaShare(warmer) : _plannedConverted;

    /// <summary>Share of barley malt's starch that the rests open, as warm as they were meant.</summary>
    public double PlannedOpenShare => OpenShare(0);

    /// <summary>Share of the starch that alpha-amylase lasts for, at most, in rests as warm as they were meant.</summary>
    public double PlannedAlphaShare => AlphaShare(0);

    /// <summary>The warmest rest, °C; an ordinary mash's where none is written down.</summary>
    public double WarmestCelsius => _rests.Length > 0 ? _rests.Max(rest => rest.Celsius) : OrdinaryRest;

    /// <summary>The rest that makes most of the wort; the warmest when none makes any.</summary>
    public double ConvertingCelsius
    {
        get
        {
            double left = 1, done = 0, most = 0, celsius = double.NaN;
            foreach (RestStep rest in _rests)
            {
                double does = Does(rest, 0, ref left, ref done);
                (most, celsius) = does > most ? (does, rest.Celsius) : (most, celsius);
            }

            return most > 0 ? celsius : WarmestCelsius;
        }
    }

    /// <summary>What is left of the enzymes at a rest's end, with the mash as warm as the draw has it.</summary>
    public EnzymesLeft LeftAfter(int rest, Draw draw)
    {
        double warmer = draw[Known.MashWarmer], alpha = 1, fading = 1;
        foreach ((double celsius, double minutes) in _rests.AsSpan(0, rest + 1))
        {
            alpha *= EnzymeLife.Left(EnzymeLife.AlphaPerMinute(celsius + warmer), minutes);
            fading *= EnzymeLife.Left(EnzymeLife.BetaPerMinute(celsius + warmer), minutes);
        }

        return new EnzymesLeft(alpha, EnzymeLife.BetaLeft(fading));
    }

    /// <summary>All of beta-amylase's work over its work in an hour at a temperature.</summary>
    public double ShareOfAnHour(double celsius)
    {
        double left = 1, work = 0;
        foreach (RestStep rest in _rests)
        {
            work += WorkOf(rest, 0, ref left);
        }

        return work / EnzymeLife.WorkMinutes(EnzymeLife.BetaPerMinute(celsius), SeriesMinutes);
    }

    private double LimitPercent(double warmer, double towardsPlateau)
    {
        double left = 1, done = 0, limit = 0;
        foreach (RestStep rest in _rests)
        {
            double does = Does(rest, warmer, ref left, ref done);
            limit += does * AttenuationLimit.ApparentPercentAt(rest.Celsius + warmer, towardsPlateau);
        }

        return done > 0 ? limit / done : AttenuationLimit.ApparentPercentAt(ConvertingCelsius + warmer, towardsPlateau);
    }

    /// <summary>Share of the wort that a rest makes: what it does of a half-hour's work there, as long as something is left to do.</summary>
    private static double Does(in RestStep rest, double warmer, ref double left, ref double done)
    {
        double whole = EnzymeLife.WorkMinutes(EnzymeLife.BetaPerMinute(rest.Celsius + warmer), DoneMinutes);
        double does = Math.Min(1 - done, WorkOf(rest, warmer, ref left) / whole);
        done += does;
        return does;
    }

    private static double WorkOf(in RestStep rest, double warmer, ref double left)
    {
        double celsius = rest.Celsius + warmer;
        double rate = EnzymeLife.BetaPerMinute(celsius);
        double work = Gelatinisation.BeginsToOpenAt(Cereal.Barley, celsius) ? left * EnzymeLife.WorkMinutes(rate, rest.Minutes) : 0;
        left *= EnzymeLife.Left(rate, rest.Minutes);
        return work;
    }

    private double OpenShare(double warmer)
    {
        double opens = 0;
        foreach (RestStep rest in _rests)
        {
            opens += StarchOpening.PerMinute(rest.Celsius + warmer) * rest.Minutes;
        }

        return _rests.Length == 0 ? 1 : 1 - Math.Exp(-opens);
    }

    /// <summary>In proportion to its minutes at full strength, as starch converts in proportion to too little enzyme.</summary>
    private double AlphaShare(double warmer)
    {
        double left = 1, work = 0;
        foreach (RestStep rest in _rests)
        {
            double rate = EnzymeLife.AlphaPerMinute(rest.Celsius + warmer);
            work += left * EnzymeLife.WorkMinutes(rate, rest.Minutes);
            left *= EnzymeLife.Left(rate, rest.Minutes);
        }

        return _rests.Length == 0 ? 1 : Math.Min(1, work / EnoughAlphaMinutes);
    }
}
