using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Web.Widgets;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>A bare number of a kit whose unit no quantity has: it stands in the label. May stay empty.</summary>
public sealed partial class NumberField
{
    private readonly string _id = FieldIds.Next();
    private readonly string _noteId = FieldIds.Next();
    private IReadOnlyList<Finding> _findings = [];

    /// <summary>What it is, with its unit.</summary>
    [Parameter]
    [EditorRequired]
    public required string Label { get; set; }

    /// <summary>A few words under the field.</summary>
    [Parameter]
    public string Hint { get; set; } = "may stay empty";

    /// <summary>The number; null when the field is empty.</summary>
    [Parameter]
    public double? Value { get; set; }

    /// <summary>The least a kit file takes.</summary>
    [Parameter]
    [EditorRequired]
    public double Least { get; set; }

    /// <summary>The most a kit file takes.</summary>
    [Parameter]
    [EditorRequired]
    public double Most { get; set; }

    /// <summary>A new number was typed; null when the field was emptied.</summary>
    [Parameter]
    public EventCallback<double?> ValueChanged { get; set; }

    private string Text => Value?.ToString(CultureInfo.InvariantCulture) ?? "";

    private Task Typed(ChangeEventArgs change)
    {
        string text = (change.Value?.ToString() ?? "").Replace(',', '.').Trim();
        double? number = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double read) ? read : null;
        if (text.Length > 0 && !(number >= Least && number <= Most))
        {
            string limit = string.Create(CultureInfo.InvariantCulture, $"{Least} to {Most}");
            _findings = [new Finding("number.range", Severity.Error, "", $"{text}: a number from {limit}, without a unit.", text, limit)];
            return Task.CompletedTask;
        }

        _findings = [];
        return ValueChanged.InvokeAsync(number);
    }
}
