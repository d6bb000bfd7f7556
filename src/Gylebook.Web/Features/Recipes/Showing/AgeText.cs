using System.Text.RegularExpressions;

namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>Bare numbers where a field has but one sensible unit: what a thumb can type.</summary>
public static partial class AgeText
{
    /// <summary>"200" typed for an age means days.</summary>
    public static string InDays(string typed) => With(typed, "d");

    /// <summary>"100" typed for cells means billions.</summary>
    public static string InBillions(string typed) => With(typed, "billion");

    private static string With(string typed, string unit) => BareNumber().IsMatch(typed) ? $"{typed.Trim().Replace(',', '.')} {unit}" : typed.Trim();

    [GeneratedRegex(@"^\s*\d+([.,]\d+)?\s*$")]
    private static partial Regex BareNumber();
}
