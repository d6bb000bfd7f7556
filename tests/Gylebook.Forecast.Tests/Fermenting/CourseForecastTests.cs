using Gylebook.Forecast.Fermenting;
using Gylebook.Science.Fermenting.Kinetics;

namespace Gylebook.Forecast.Tests.Fermenting;

public sealed class CourseForecastTests
{
    private const int Draws = 300;

    [Fact]
    public void Probe()
    {
        foreach (double within in new[] { 0.002, 0.001 })
        {
            foreach (bool sensor in new[] { true, false })
            {
                Console.WriteLine($"within {within} sensor {sensor}");
                foreach (string kind in new[] { "lager", "ale" })
                {
                    int day = 0, end = 0, all = 0, logistic = 0, inBand = 0; double bias = 0, width = 0, endWidth = 0; List<double> errors = [];
                    for (int n = 0; n < 210; n++)
                    {
                        SyntheticFermentation truth = SyntheticFermentation.Of("probe", n);
                        if (truth.Kind != kind || (kind == "ale" && n % 2 == 0))
                        {
                            continue;
                        }

                        (double offset, double scatter) = sensor ? (0.0015, 0.0010) : (0.0007, 0.0009);
                        double[] hours = sensor ? [.. Enumerable.Range(0, 49).Select(i => (double)i)] : [0, 12, 24, 36, 48];
                        CourseFan fan = CourseForecast.Of(truth.Prior("p", Draws, offset) with { Within = within }, truth.Read("p", hours, offset, scatter), [], "s");
                        double done = truth.DoneHours(within);
                        all++;
                        day += Math.Abs(fan.DoneHours.Middle - done) <= 24 ? 1 : 0;
                        inBand += done >= fan.DoneHours.Low && done <= fan.DoneHours.High ? 1 : 0;
                        end += truth.End >= fan.End.Low && truth.End <= fan.End.High ? 1 : 0;
                        logistic += fan.IsLogistic ? 1 : 0;
                        double error = Math.Min(2000, fan.DoneHours.Middle) - done;
                        bias += error; errors.Add(Math.Abs(error)); width += fan.DoneHours.Width; endWidth += fan.End.Width;
                    }

                    errors.Sort();
                    Console.WriteLine(FormattableString.Invariant($"{kind} n {all} day {100.0 * day / all:0} end {100.0 * end / all:0} doneband {100.0 * inBand / all:0} logistic {logistic} bias {bias / all:0.0} median err {errors[all / 2]:0} 80% {errors[all * 4 / 5]:0} width {width / all:0} endwidth {1000 * endWidth / all:0.0}"));
                }
            }
        }
    }
}
