namespace Gylebook.Web.Widgets;

/// <summary>Names by which a label finds its field.</summary>
internal static class FieldIds
{
    private static long Last;

    /// <summary>A name that no other field of this program has.</summary>
    public static string Next() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"field-{Interlocked.Increment(ref Last)}");
}
