namespace Gylebook.Forecast.Treating;

/// <summary>Grams of an alkaline salt to a pH, by halving: more of it never lowers the pH.</summary>
internal static class AlkaliSearch
{
    private const int Halvings = 40;

    /// <summary>The least amount that reaches it, or the most there may be.</summary>
    public static double Grams(Func<double, double> ph, double wanted, double least, double most)
    {
        (double low, double high) = (least, most);
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (low + high) / 2;
            (low, high) = ph(middle) >= wanted ? (low, middle) : (middle, high);
        }

        return high;
    }
}
