using System.Text.Json.Nodes;

namespace Gylebook.Gyles.Plans;

/// <summary>A frozen forecast read as what it is: text. No engine is asked.</summary>
public sealed class FrozenForecast
{
    private readonly JsonObject _forecast;

    private FrozenForecast(JsonObject forecast) => _forecast = forecast;

    /// <summary>The forecast of a plan.</summary>
    public static FrozenForecast Of(GylePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(JsonNode.Parse(plan.Forecast) as JsonObject ?? []);
    }

    /// <summary>Its headline numbers, as JSON.</summary>
    public string HeadlineText => (_forecast["headline"] ?? new JsonObject()).ToJsonString();

    /// <summary>The likely value of a headline number; null where it was unknown.</summary>
    public double? Likely(string name) => End(name, "likely");

    /// <summary>One end of a headline number: <c>low</c>, <c>likely</c> or <c>high</c>; null where it was unknown.</summary>
    public double? End(string name, string end) => (double?)(_forecast["headline"]?[name] as JsonObject)?[end];
}
