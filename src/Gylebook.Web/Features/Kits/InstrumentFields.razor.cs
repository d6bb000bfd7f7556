using System.Globalization;
using Gylebook.Recipes;
using Gylebook.Recipes.Kits;
using Microsoft.AspNetCore.Components;

namespace Gylebook.Web.Features.Kits;

/// <summary>How far the instruments may be off.</summary>
public sealed partial class InstrumentFields
{
    private IReadOnlyList<Finding> _hydrometer = [];

    private Task Change(Func<Instruments, Instruments> change)
    {
        Instruments changed = change(Kit.Instruments ?? new Instruments(null, null, null, null));
        return Put(Kit with { Instruments = changed == new Instruments(null, null, null, null) ? null : changed });
    }

    /// <summary>A difference of gravities has no unit, so it is read here and not by the table of units.</summary>
    private Task Hydrometer(ChangeEventArgs change)
    {
        string text = (change.Value?.ToString() ?? "").Replace("±", "", StringComparison.Ordinal).Replace(',', '.').Trim();
        bool isRead = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double off) && off < 0.1;
        if (text.Length > 0 && !isRead)
        {
            _hydrometer = [new Finding("instrument.wrong", Severity.Error, "", $"{text}: a hydrometer's error is a number such as 0.001, below 0.1.", text, "0.1")];
            return Task.CompletedTask;
        }

        _hydrometer = [];
        return Change(instruments => instruments with { Hydrometer = text.Length == 0 ? null : $"± {text}" });
    }
}
