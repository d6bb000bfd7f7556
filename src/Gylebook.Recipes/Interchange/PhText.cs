using System.Globalization;
using System.Text.Json;
using Gylebook.Recipes.Interchange.Json;

namespace Gylebook.Recipes.Interchange;

/// <summary>A pH as text, <c>"3.4"</c>, or as a bare number: it has no unit to forget. A comma before the decimals is read too.</summary>
internal static class PhText
{
    private const int Longest = 64;
    private const double Lowest = 0;
    private const double Highest = 14;

    internal static PhTarget? Read(JsonCursor at)
    {
        if ((at.Element.ValueKind == JsonValueKind.Number ? at.Element.GetRawText() : at.Text(Longest)) is not { } text)
        {
            return null;
        }

        if (double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double ph)
            && ph is >= Lowest and <= Highest)
        {
            return new PhTarget(ph, text);
        }

        string limit = Invariant($"{Lowest} to {Highest}");
        at.Findings.Error("ph.wrong", at.Path, $"\"{FindingList.Shorten(text)}\"; write a pH as \"3.4\", from {limit}", text, limit);
        return null;
    }
}
