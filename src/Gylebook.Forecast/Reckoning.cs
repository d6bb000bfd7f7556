using Gylebook.Recipes;

namespace Gylebook.Forecast;

/// <summary>The forecast's door: what cannot be reckoned is told as a finding, and no exception leaves.</summary>
/// <remarks>Reaching it is a fault of ours, to be mended where it began; a brewer's page must stay open all the same.</remarks>
internal static class Reckoning
{
    /// <summary>What is reckoned; or what is told in its stead.</summary>
    /// <param name="reckon">The reckoning.</param>
    /// <param name="where">The place that is being reckoned, as findings name it.</param>
    /// <param name="otherwise">What is told with the finding, and with what failed.</param>
    public static T Or<T>(Func<T> reckon, string where, Func<Finding, Exception, T> otherwise)
    {
        try
        {
            return reckon();
        }
        catch (Exception failed) when (failed is not (OutOfMemoryException or OperationCanceledException))
        {
            string what = failed.Message.ReplaceLineEndings(" ").Trim().TrimEnd('.');
            return otherwise(
                new("forecast.notReckoned", Severity.Error, where, $"this cannot be reckoned: {what}. Look at what was entered last; the fault is Gylebook's, please report it", what),
                failed);
        }
    }
}
