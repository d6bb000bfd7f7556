using Gylebook.Engine.State;

namespace Gylebook.Forecast.Records;

/// <summary>What went in, what came out, and whether the two agree: summed from the record, never inside a stage.</summary>
/// <param name="MassIn">Kilograms that entered.</param>
/// <param name="MassOut">Kilograms that left, the poured beer among them.</param>
/// <param name="RelativeError">The worse of the mass error and of each conserved component's, as a share of what went through.</param>
/// <param name="Worst">Where the worst error lies.</param>
public sealed record Ledger(double MassIn, double MassOut, double RelativeError, string Worst)
{
    /// <summary>Largest relative error of a balance that closes: rounding itself is about 1e-15.</summary>
    public const double Tolerance = 1e-12;

    /// <summary>Whether it closes.</summary>
    public bool Closes => RelativeError <= Tolerance;

    /// <summary>Sums a record.</summary>
    public static Ledger Of(RunRecord record)
    {
        Wort entered = Sum(record.Additions.Select(a => a.What));
        Wort left = Sum(record.Losses.Select(l => l.What).Concat(record.Stages.Where(s => s.Stage == Stage.Pour).Select(s => s.Wort)));
        double worst = RelativeDifference(entered.Mass, left.Mass);
        string where = "mass";
        foreach (ComponentRow row in Components.Table.Where(row => row.Conserved || IsConservedHere(row, record)))
        {
            double error = RelativeDifference(entered[row.Component], left[row.Component]);
            if (error > worst)
            {
                (worst, where) = (error, row.Name);
            }
        }

        return new Ledger(entered.Mass, left.Mass, worst, where);
    }

    /// <summary>Nothing but souring makes lactic acid.</summary>
    private static bool IsConservedHere(ComponentRow row, RunRecord record) =>
        row.Component == Component.LacticAcid && !record.Stages.Exists(s => s.Stage == Stage.Sour);

    private static Wort Sum(IEnumerable<Wort> parts)
    {
        Wort sum = default;
        foreach (Wort part in parts)
        {
            sum.Add(part);
        }

        return sum;
    }

    private static double RelativeDifference(double entered, double left) =>
        entered == left ? 0 : Math.Abs(entered - left) / Math.Max(Math.Abs(entered), Math.Abs(left));
}
