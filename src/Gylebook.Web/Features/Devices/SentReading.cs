using System.Globalization;
using System.Text.Json;
using Gylebook.Gyles.Cellar;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Devices;

/// <summary>One reading as a device sends it: the fields of <c>docs/guide/sensors.md</c>, and no others.</summary>
internal static class SentReading
{
    private const int LongestId = 100;

    private static readonly string[] Fields = ["at", "gravity", "temperature", "pressure", "battery", "id"];

    /// <summary>Earlier than any of ours: a clock that has lost its time begins in 1970 or 2000.</summary>
    private static readonly DateTimeOffset Earliest = new(2001, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>How far ahead of ours a clock may go.</summary>
    private static readonly TimeSpan Ahead = TimeSpan.FromDays(1);

    /// <summary>Reads it.</summary>
    /// <param name="sent">What was sent.</param>
    /// <param name="now">The time of arrival.</param>
    /// <param name="reading">What it says.</param>
    /// <returns>Why it cannot be taken, and for which field; null when it can.</returns>
    public static (string Field, string Why)? Read(JsonElement sent, DateTimeOffset now, out SensorReading reading)
    {
        reading = new SensorReading(now, now);
        if (sent.ValueKind != JsonValueKind.Object)
        {
            return ("", $"a reading is an object with {string.Join(", ", Fields)}; this is {Said(sent)}");
        }

        foreach (JsonProperty field in sent.EnumerateObject())
        {
            if (field.Value.ValueKind != JsonValueKind.Null && Take(ref reading, field.Name, field.Value, now) is { } why)
            {
                return (Fields.Contains(field.Name) ? field.Name : "", why);
            }
        }

        return reading.SaysSomething ? null : ("", "a reading has a gravity, a temperature or a pressure; this has none");
    }

    private static string? Take(ref SensorReading reading, string field, JsonElement value, DateTimeOffset now)
    {
        string? why;
        switch (field)
        {
            case "at":
                why = At(value, now, out DateTimeOffset at);
                reading = reading with { At = at };
                return why;
            case "gravity":
                why = Value(field, value, SensorText.Gravity, SensorText.Gravity, out SpecificGravity? gravity);
                reading = reading with { Gravity = gravity };
                return why;
            case "temperature":
                why = Value(field, value, SensorText.Temperature, SensorText.Temperature, out Temperature? temperature);
                reading = reading with { Temperature = temperature };
                return why;
            case "pressure":
                why = Value(field, value, SensorText.Pressure, SensorText.Pressure, out GaugePressure? pressure);
                reading = reading with { Pressure = pressure };
                return why;
            case "battery":
                why = Value(field, value, SensorText.Battery, SensorText.Battery, out double? volts);
                reading = reading with { BatteryVolts = volts };
                return why;
            case "id":
                string? id = value.ValueKind switch { JsonValueKind.String => value.GetString(), JsonValueKind.Number => value.GetRawText(), _ => null };
                reading = reading with { Id = id };
                return id is { Length: > 0 and <= LongestId } ? null : Invariant($"id {Said(value)}: must be a number or a text of 1 to {LongestId} letters");
            default:
                return $"\"{Short(field)}\" is no field of a reading; they are {string.Join(", ", Fields)}";
        }
    }

    private delegate string? Reader<in TFrom, T>(TFrom from, out T value);

    private static string? Value<T>(string field, JsonElement sent, Reader<double, T?> number, Reader<string, T?> text, out T? value)
        where T : struct
    {
        value = null;
        return sent.ValueKind switch
        {
            JsonValueKind.Number => number(sent.GetDouble(), out value),
            JsonValueKind.String => text(Short(sent.GetString()!), out value),
            _ => $"{field} {Said(sent)}: must be a number, or a text with its unit",
        };
    }

    private static string? At(JsonElement sent, DateTimeOffset now, out DateTimeOffset at)
    {
        string text = sent.ValueKind switch { JsonValueKind.String => sent.GetString()!, JsonValueKind.Number => sent.GetRawText(), _ => "" };

        // A zone that nobody said is none: those that are read without one are those a second zone would read otherwise.
        bool isTime = CsvReadings.TryTime(text, TimeZoneInfo.Utc, out at) && (sent.ValueKind == JsonValueKind.Number || text.EndsWith('Z') || HasOffset(text));
        return !isTime ? $"at {Said(sent)}: must be a text with its zone, such as \"2026-03-01T18:30:00Z\", or seconds since 1970"
            : at < Earliest || at > now + Ahead ? Invariant($"at {Short(text)}: must be from {Earliest:yyyy-MM-dd} to {now + Ahead:yyyy-MM-dd}; where a device has no clock to trust, leave it out, and the time of arrival is taken")
            : null;
    }

    private static bool HasOffset(string text) => text.Length > 16 && text.AsSpan(16).IndexOfAny('+', '-') >= 0;

    private static string Said(JsonElement value) => Short(value.GetRawText());

    private static string Short(string text) => text.Length <= 40 ? text : string.Create(CultureInfo.InvariantCulture, $"{text.AsSpan(0, 40)}…");
}
