using System.Globalization;

namespace Gylebook.Recipes.Foods;

/// <summary>What was borrowed and what was found doubtful while a food was made up.</summary>
internal sealed class MakeupNotes(string id)
{
    private readonly List<FoodAssumption> _assumed = [];
    private readonly List<Finding> _findings = [];

    /// <summary>What was assumed, in order.</summary>
    public IReadOnlyList<FoodAssumption> Assumed => _assumed;

    /// <summary>What was found, in order.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Notes a figure as borrowed from the family, and gives it back.</summary>
    public double Borrow(string what, double value, string unit, FoodFamily family)
    {
        Assume(what, unit == "1" ? Say(value) : $"{Say(value)} {unit}", $"family: {family.Name} ({family.Provenance.Status})");
        return value;
    }

    /// <summary>Notes a figure with its ends as borrowed from the family, and gives it back.</summary>
    public double BorrowRange(string what, double value, double low, double high, string unit, FoodFamily family)
    {
        Assume(what, $"{Say(value)} {unit} ({Say(low)} to {Say(high)})", $"family: {family.Name} ({family.Provenance.Status})");
        return value;
    }

    /// <summary>Notes something as assumed.</summary>
    public void Assume(string what, string value, string source) => _assumed.Add(new FoodAssumption(what, value, source));

    /// <summary>Notes a finding about a field of the food.</summary>
    public void Find(
        string code, Severity severity, string field, string message, string? value = null, string? limit = null) =>
        _findings.Add(new Finding(code, severity, $"foods/{id}.{field}", message, value, limit));

    /// <summary>A number for a message: at most three decimals, a point.</summary>
    public static string Say(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
