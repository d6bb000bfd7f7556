using Gylebook.Recipes;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

/// <summary>What the liquor science finds doubtful, as a finding with its place in the plan.</summary>
internal static class DiagnosisFinding
{
    public static Finding Of(WaterDiagnosis diagnosis, string where) => new(
        diagnosis.Code, Severity.Warning, where, diagnosis.Message,
        Number(diagnosis.Value, diagnosis.Unit), Number(diagnosis.Limit, diagnosis.Unit));

    internal static string Number(double value, string unit) =>
        Invariant($"{value:0.##} {unit}").TrimEnd();
}
