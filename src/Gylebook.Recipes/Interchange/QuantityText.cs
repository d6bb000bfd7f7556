using System.Diagnostics.CodeAnalysis;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>Quantities as files write them: read by <see cref="UnitTable"/>.</summary>
internal static class QuantityText
{
    /// <summary>Reads a quantity, or says what is wrong with the text.</summary>
    internal static bool TryParse<T>(string text, out Entered<T> entered, [NotNullWhen(false)] out string? problem)
        where T : struct, IQuantity<T>
    {
        if (UnitTable.TryParse(text, out entered, out var words))
        {
            problem = null;
            return true;
        }

        // Ends of the range in the unit people write: "0 % to 100 %", not "0 1 to 1 1".
        problem = words.TrimEnd('.').Replace(
            $"{T.Limits.Format(T.Limits.Low)} to {T.Limits.Format(T.Limits.High)}", Limit<T>(), StringComparison.Ordinal);
        return false;
    }

    /// <summary>The range a quantity can have, in words.</summary>
    internal static string Limit<T>()
        where T : struct, IQuantity<T> =>
        $"{Written(T.FromCanonical(T.Limits.Low))} to {Written(T.FromCanonical(T.Limits.High))}";

    /// <summary>How a quantity of this sort is written.</summary>
    internal static string Example<T>()
        where T : struct, IQuantity<T> => $"1 {UnitTable.UnitsOf<T>()[0].Symbol}";

    /// <summary>Whether the text has a unit of that sort, whatever its number.</summary>
    internal static bool LooksLike<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.KindOf<T>().Find(text.TrimStart("+-0123456789., \t".ToCharArray()).TrimEnd()) is not null;

    private static string Written<T>(T value)
        where T : struct, IQuantity<T> => UnitTable.Format(value, UnitTable.UnitsOf<T>()[0].Symbol);
}
