using Gylebook.Forecast.Running;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.LayingOut;

/// <summary>The parameters of a run as they are found: the known ones first, in their fixed places.</summary>
internal sealed class ParameterList
{
    private readonly List<Parameter?> _parameters = [.. new Parameter?[(int)Known.FatDensity + 1]];
    private readonly Dictionary<string, int> _ofIngredients = new(StringComparer.Ordinal);

    /// <summary>All of them.</summary>
    public IReadOnlyList<Parameter> All => [.. _parameters.Select(p => p ?? throw new InvalidOperationException("A known parameter was never set."))];

    /// <summary>Sets a known parameter.</summary>
    public void Set(Known place, string id, double median, string unit, Provenance from) =>
        _parameters[(int)place] = new Parameter(id, median, unit, from.Source, from.Status);

    /// <summary>Sets a known parameter to its starting value.</summary>
    public void Start(Known place, string id)
    {
        StartingValue value = StartingValues.Of(id);
        Set(place, id, value.Value, value.Unit, value.Provenance);
    }

    /// <summary>The place of a starting value that only some runs need.</summary>
    public int Starting(string id)
    {
        StartingValue value = StartingValues.Of(id);
        return Of(id, value.Value, value.Unit, value.Provenance);
    }

    /// <summary>The place of an ingredient's parameter, which several lines may share.</summary>
    public int Of(string id, double median, string unit, Provenance from)
    {
        if (!_ofIngredients.TryGetValue(id, out int there))
        {
            there = _parameters.Count;
            _parameters.Add(new Parameter(id, median, unit, from.Source, from.Status));
            _ofIngredients.Add(id, there);
        }

        return there;
    }
}
