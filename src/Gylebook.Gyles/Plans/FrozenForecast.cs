using System.Text.Json.Nodes;
using Gylebook.Forecast;

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

    /// <summary>The kit's name; empty where it says none.</summary>
    public string Kit => (string?)_forecast["kit"] ?? "";

    /// <summary>What must be told to people who cannot eat everything: one sentence, or one for the EU and one for the US.</summary>
    public IReadOnlyList<string> Allergens
    {
        get
        {
            string? eu = (string?)_forecast["allergens"]?["statementEu"], us = (string?)_forecast["allergens"]?["statementUs"];
            return eu == us || us is null || eu is null ? [.. new[] { eu ?? us }.OfType<string>()] : [$"{eu} (EU)", $"{us} (US)"];
        }
    }

    /// <summary>All that was cautioned of, in the order of the run.</summary>
    public IReadOnlyList<FrozenCaution> Cautions =>
    [
        .. (_forecast["cautions"] as JsonArray ?? []).OfType<JsonObject>().Select(caution => new FrozenCaution(
            (string?)caution["code"] ?? "", (string?)caution["severity"] ?? "", (string?)caution["where"] ?? "", (string?)caution["message"] ?? "")),
    ];

    /// <summary>Its headline numbers, as JSON.</summary>
    public string HeadlineText => (_forecast["headline"] ?? new JsonObject()).ToJsonString();

    /// <summary>The likely value of a headline number; null where it was unknown.</summary>
    public double? Likely(string name) => End(name, "likely");

    /// <summary>One end of a headline number: <c>low</c>, <c>likely</c> or <c>high</c>; null where it was unknown.</summary>
    public double? End(string name, string end) => (double?)(_forecast["headline"]?[name] as JsonObject)?[end];

    /// <summary>Low and high of any number that had a band: <c>stage.mash.gravity</c>; null where it had none.</summary>
    public (double Low, double High)? Ends(string id) =>
        _forecast["howSure"]?["bands"]?[id] is JsonObject band && (double?)band["low"] is { } low && (double?)band["high"] is { } high ? (low, high) : null;
}

/// <summary>A caution as it was frozen.</summary>
/// <param name="Code">Its stable name.</param>
/// <param name="Severity">How serious: <c>warning</c>.</param>
/// <param name="Where">Where it belongs, in words: <c>ferment day 3</c>.</param>
/// <param name="Message">In full.</param>
public sealed record FrozenCaution(string Code, string Severity, string Where, string Message)
{
    /// <summary>Whether it tells more than a limit of a number.</summary>
    public bool IsWarning => Severity != Words.Of(Recipes.Severity.Note);

    /// <summary>Whether it is read in full wherever it stands: by today's table of cautions, and always where that no longer has its sort.</summary>
    public bool IsGrave => Severity == Words.Of(Recipes.Severity.Error) || KindOf(Code) is not { Weight: not CautionWeight.Grave };

    /// <summary>It in two or three words; null where today's table no longer has its sort.</summary>
    public string? Mark => KindOf(Code)?.Mark;

    private static CautionKind? KindOf(string code) => CautionKinds.All.FirstOrDefault(kind => kind.Code == code);
}
