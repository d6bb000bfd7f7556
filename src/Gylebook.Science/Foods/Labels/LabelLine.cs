namespace Gylebook.Science.Foods.Labels;

/// <summary>A line of a nutrition panel, in the unit it is printed in.</summary>
public enum LabelLine
{
    /// <summary>The serving, or the 100 g, that the other lines are for; g.</summary>
    Serving,

    /// <summary>Energy, kcal (a US "Calorie").</summary>
    EnergyKilocalories,

    /// <summary>Energy, kJ.</summary>
    EnergyKilojoules,

    /// <summary>Total fat, g.</summary>
    Fat,

    /// <summary>Saturated fat, g.</summary>
    SaturatedFat,

    /// <summary>Cholesterol, mg.</summary>
    Cholesterol,

    /// <summary>Sodium, mg.</summary>
    Sodium,

    /// <summary>Potassium, mg.</summary>
    Potassium,

    /// <summary>Salt, g: 2.5 times the total sodium.</summary>
    Salt,

    /// <summary>Carbohydrate, g: with fibre on a US panel, without it on an EU panel.</summary>
    Carbohydrate,

    /// <summary>Dietary fibre, g.</summary>
    Fibre,

    /// <summary>Total sugars, g.</summary>
    Sugars,

    /// <summary>Added sugars, g, a part of the sugars.</summary>
    AddedSugars,

    /// <summary>Sugar alcohols, g.</summary>
    Polyols,

    /// <summary>Starch, g.</summary>
    Starch,

    /// <summary>Protein, g.</summary>
    Protein,
}
