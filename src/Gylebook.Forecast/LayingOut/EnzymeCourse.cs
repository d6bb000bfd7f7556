using Gylebook.Recipes;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.LayingOut;

/// <summary>Enzymes at the end of a rest, as shares of what the grist brought.</summary>
/// <param name="Alpha">Alpha-amylase.</param>
/// <param name="Beta">Beta-amylase.</param>
internal readonly record struct EnzymesLeft(double Alpha, double Beta);

/// <summary>What a row of rests does to the amylases, and how much work beta-amylase does in it.</summary>
/// <remarks>
/// Each rest at its own temperature from end to end; the way from one to the next is not counted. Work counts where barley starch
/// begins to open; the enzyme fades in cooler rests too. decision 0013.
/// </remarks>
internal static class EnzymeCourse
{
    /// <summary>The series of attenuation against temperature is of one rest of an hour.</summary>
    private const double SeriesMinutes = 60;

    /// <summary>What is left at each rest's end.</summary>
    public static IReadOnlyList<EnzymesLeft> LeftAfter(IReadOnlyList<Rest> rests)
    {
        List<EnzymesLeft> all = [];
        EnzymesLeft left = new(1, 1);
        foreach (Rest rest in rests)
        {
            (double celsius, double minutes) = (rest.Temperature.Value.Celsius, rest.Time.Value.Minutes);
            left = new EnzymesLeft(
                left.Alpha * EnzymeLife.Left(EnzymeLife.AlphaPerMinute(celsius), minutes),
                left.Beta * EnzymeLife.Left(EnzymeLife.BetaPerMinute(celsius), minutes));
            all.Add(left);
        }

        return all;
    }

    /// <summary>Beta-amylase's work in each rest, as minutes at full strength.</summary>
    public static IReadOnlyList<double> BetaWork(IReadOnlyList<Rest> rests)
    {
        List<double> all = [];
        double left = 1;
        foreach (Rest rest in rests)
        {
            (double celsius, double minutes) = (rest.Temperature.Value.Celsius, rest.Time.Value.Minutes);
            double rate = EnzymeLife.BetaPerMinute(celsius);
            all.Add(Gelatinisation.BeginsToOpenAt(Cereal.Barley, celsius) ? left * EnzymeLife.WorkMinutes(rate, minutes) : 0);
            left *= EnzymeLife.Left(rate, minutes);
        }

        return all;
    }

    /// <summary>All that work over the work of an hour at a temperature.</summary>
    public static double ShareOfAnHour(IReadOnlyList<Rest> rests, double celsius) =>
        BetaWork(rests).Sum() / EnzymeLife.WorkMinutes(EnzymeLife.BetaPerMinute(celsius), SeriesMinutes);
}
