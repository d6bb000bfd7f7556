namespace Gylebook.Science.Water;

/// <summary>A salt plan written as numbers: one column an offer, one row an ion.</summary>
/// <remarks>
/// Columns are salts (g/L), acids (mL/L), then the other water (share). Every ion is linear in them, so the weighted
/// squared miss is a convex quadratic.
/// </remarks>
internal sealed class SaltProblem
{
    /// <summary>A miss is measured against the target, or against this many mg/L if the target is smaller.</summary>
    internal const double SmallestScale = 10;

    private readonly SaltPlan _plan;

    internal SaltProblem(SaltPlan plan)
    {
        _plan = plan;
        Acids = plan.Targets.Any(target => target.Ion == Ion.Bicarbonate) ? plan.Acids ?? [] : [];
        int count = plan.Salts.Count + Acids.Count + (plan.Dilution is null ? 0 : 1);
        (Low, High, Price, Names) = (new double[count], new double[count], new double[count], new string[count]);
        Effect = new double[count, Ions.All.Count];
        int column = 0;
        foreach (SaltOffer offer in plan.Salts)
        {
            Column(column++, offer.Salt.Id, offer.LeastGramsPerLitre, offer.MostGramsPerLitre, offer.Price,
                offer.Salt.MilligramsPerGram);
        }

        foreach (AcidOffer offer in Acids)
        {
            Column(column++, offer.Acid.Id, 0, offer.MostUnitsPerLitre, offer.Price,
                ion => offer.Acid.MilligramsPerUnit(ion, plan.AcidPh));
        }

        if (plan.Dilution is { } dilution)
        {
            Column(column, "dilution", 0, Argument.MustBeWithin(dilution.MostShare, 0, 1), dilution.Price,
                ion => dilution.Water[ion] - plan.Source[ion]);
        }
    }

    internal IReadOnlyList<AcidOffer> Acids { get; }

    internal double[] Low { get; }

    internal double[] High { get; }

    internal double[] Price { get; }

    internal string[] Names { get; }

    /// <summary>mg/L of each ion for one unit of each offer.</summary>
    internal double[,] Effect { get; }

    /// <summary>mg/L of one ion with so much of each offer.</summary>
    internal double Reached(Ion ion, ReadOnlySpan<double> amounts)
    {
        double sum = _plan.Source[ion];
        for (int column = 0; column < amounts.Length; column++)
        {
            sum += Effect[column, (int)ion] * amounts[column];
        }

        return sum;
    }

    /// <summary>Weighted squared relative miss plus prices.</summary>
    internal double Objective(ReadOnlySpan<double> amounts)
    {
        double sum = 0;
        foreach (IonTarget target in _plan.Targets)
        {
            double miss = (Reached(target.Ion, amounts) - target.MilligramsPerLitre) / Scale(target);
            sum += target.Weight * miss * miss;
        }

        for (int column = 0; column < amounts.Length; column++)
        {
            sum += Price[column] * amounts[column];
        }

        return sum;
    }

    /// <summary>The quadratic ½ xᵀHx + cᵀx that differs from the objective by a constant.</summary>
    internal (double[,] Hessian, double[] Linear) Quadratic()
    {
        int count = Low.Length;
        double[,] hessian = new double[count, count];
        double[] linear = [.. Price];
        foreach (IonTarget target in _plan.Targets)
        {
            double scale = Scale(target);
            double factor = 2 * target.Weight / (scale * scale);
            double short0 = target.MilligramsPerLitre - _plan.Source[target.Ion];
            for (int row = 0; row < count; row++)
            {
                double effect = factor * Effect[row, (int)target.Ion];
                linear[row] -= effect * short0;
                for (int column = 0; column < count; column++)
                {
                    hessian[row, column] += effect * Effect[column, (int)target.Ion];
                }
            }
        }

        return (hessian, linear);
    }

    internal static double Scale(IonTarget target) => Math.Max(SmallestScale, Math.Abs(target.MilligramsPerLitre));

    private void Column(int column, string name, double low, double high, double price, Func<Ion, double> effect)
    {
        Low[column] = Argument.MustBeWithin(low, 0, 1e6);
        High[column] = Argument.MustBeWithin(high, 0, 1e6);
        Argument.MustBeWithin(high, low, double.MaxValue, name);
        Price[column] = Argument.MustBeWithin(price, 0, 1e6);
        Names[column] = name;
        foreach (Ion ion in Ions.All)
        {
            Effect[column, (int)ion] = effect(ion);
        }
    }
}
