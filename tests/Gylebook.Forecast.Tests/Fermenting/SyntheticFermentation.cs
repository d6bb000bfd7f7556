using Gylebook.Forecast.Fermenting;
using Gylebook.Science.Fermenting.Kinetics;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Forecast.Tests.Fermenting;

/// <summary>A fermentation that never was, on a curve that is not ours, and what an instrument would have read of it.</summary>
/// <param name="Kind">Which curve.</param>
/// <param name="Temperature">Of the beer.</param>
/// <param name="Start">True gravity at pitching.</param>
/// <param name="End">True gravity at the end.</param>
/// <param name="Left">Share of the fall still to come, by the hour; falls from 1 to 0.</param>
internal sealed record SyntheticFermentation(string Kind, double Temperature, double Start, double End, Func<double, double> Left)
{
    private const double StartDeviation = 0.001, EndDeviation = 0.002;

    /// <summary>True gravity at an hour.</summary>
    public double GravityAt(double hours) => End + ((Start - End) * Left(hours));

    /// <summary>The first hour at which it is so near the end.</summary>
    public double DoneHours(double within) =>
        new Bracket(0, 2000).Halved(hours => GravityAt(hours) - End - within, close: 1e-3).High;

    /// <summary>The numbered one of a seed: every third on the model of de Andrés-Toro at 10 to 14 °C, the others five-parameter logistics at 17 to 22 °C.</summary>
    public static SyntheticFermentation Of(string seed, int number)
    {
        Numbers chance = new(seed, Invariant($"{number}"));
        double start = 1.050 + (0.006 * chance.Normal()), end = 1.011 + (0.002 * chance.Normal());
        if (number % 3 == 0)
        {
            double celsius = 10 + (4 * chance.Share()), slower = Math.Exp(0.15 * chance.Normal());
            AndresToro model = new(celsius);
            return new("lager", celsius, start, end, hours => model.SugarLeft(hours / slower));
        }

        // Middles and slopes about those of the laboratory method's tubes at 21 °C; asymmetry from half to twice.
        double middle = 36 * Math.Exp(0.25 * chance.Normal()), slope = 0.10 * Math.Exp(0.25 * chance.Normal()), bent = Math.Exp(Math.Log(2) * ((2 * chance.Share()) - 1));
        double Level(double hours) => Math.Pow(1 / (1 + Math.Exp(slope * (hours - middle))), bent);
        return new("ale", 17 + (5 * chance.Share()), start, end, hours => Level(hours) / Level(0));
    }

    /// <summary>What a brewer knew before: gravities drawn about something that is itself as wrong as they are wide.</summary>
    public CoursePrior Prior(string seed, int draws, double offset)
    {
        Numbers chance = new(seed, Invariant($"prior {Start}"));
        double middleStart = Start + (StartDeviation * chance.Normal()), middleEnd = End + (EndDeviation * chance.Normal());
        return new CoursePrior
        {
            StartGravities = [.. Enumerable.Range(0, draws).Select(_ => middleStart + (StartDeviation * chance.Normal()))],
            EndGravities = [.. Enumerable.Range(0, draws).Select(_ => middleEnd + (EndDeviation * chance.Normal()))],
            Temperature = TemperatureCourse.Constant(Temperature),
            MillionCells = Kind == "lager" ? 18 : 9,
            InstrumentOffset = offset,
        };
    }

    /// <summary>Readings at some hours by an instrument that is off by one number in all and scatters by another in each.</summary>
    public CourseReading[] Read(string seed, IEnumerable<double> hours, double offset, double scatter)
    {
        Numbers chance = new(seed, Invariant($"read {Start}"));
        double off = offset * chance.Normal();
        return [.. hours.Select(hour => new CourseReading(hour, GravityAt(hour) + off + (scatter * chance.Normal()), scatter))];
    }

    /// <summary>Numbers of chance.</summary>
    private sealed class Numbers(string seed, string what)
    {
        private SeededRandom _stream = SeededRandom.Of(seed, what);

        public double Share() => (_stream.Below(1_000_000) + 0.5) / 1_000_000;

        public double Normal() => StandardNormal.Quantile(Share());
    }
}
