using Gylebook.Forecast.Running;
using Gylebook.Forecast.State;
using Gylebook.Science.Mashing;

namespace Gylebook.Forecast.Cooling;

/// <summary>Wort that has to be cooled.</summary>
/// <param name="Kilograms">In the kettle.</param>
/// <param name="KilojoulesPerKilogramKelvin">Its specific heat.</param>
/// <param name="RunOffKilograms">What of it runs off into the fermenter.</param>
/// <param name="RunOffLitres">The same, litres at 20 °C.</param>
internal readonly record struct HotWort(
    double Kilograms, double KilojoulesPerKilogramKelvin, double RunOffKilograms, double RunOffLitres)
{
    /// <summary>Whether there is any.</summary>
    public bool IsThere => Kilograms > 0 && RunOffLitres > 0;

    /// <summary>From the wort before the chiller and in the fermenter.</summary>
    public static HotWort Of(in Wort kettle, in Wort cast) =>
        new(kettle.Mass, WortHeat.OfWort(Math.Clamp(kettle.RealExtractPlato, 0, 100)), cast.Mass, cast.Litres);

    /// <summary>From a run at the medians: what cools does not move mass.</summary>
    public static HotWort Of(RunPlan plan)
    {
        KettleLog log = default;
        Run.Through(plan, plan.Medians, new double[plan.PortionCount * Figures.Count], ref log);
        return log.Kettle.Mass > 0 && log.Kettle.IsSound && log.Cast.IsSound ? Of(log.Kettle, log.Cast) : default;
    }

    private struct KettleLog : IRunLog
    {
        private Wort _kettle;
        private Wort _cast;

        public readonly Wort Kettle => _kettle;

        public readonly Wort Cast => _cast;

        public readonly void Added(Stage stage, int portion, in Wort added)
        {
        }

        public readonly void Lost(Stage stage, int portion, Loss what, in Wort lost)
        {
        }

        public void Reached(Stage stage, int portion, in Portion state)
        {
            if (stage == Stage.Chill)
            {
                _kettle = state.Wort;
            }
            else if (stage == Stage.Cast)
            {
                _cast = state.Wort;
            }
        }

        public readonly void Bittered(int addition, double milligrams)
        {
        }
    }
}
