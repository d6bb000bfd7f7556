namespace Gylebook.Engine.State;

/// <summary>What a portion is made of. Anhydrous kilograms, unless the table of <see cref="Components"/> says otherwise.</summary>
public enum Component
{
    /// <summary>Water, wherever it came from.</summary>
    Water,

    /// <summary>Sucrose.</summary>
    Sucrose,

    /// <summary>Glucose.</summary>
    Glucose,

    /// <summary>Fructose.</summary>
    Fructose,

    /// <summary>Maltose.</summary>
    Maltose,

    /// <summary>Maltotriose.</summary>
    Maltotriose,

    /// <summary>Dextrins, and every other soluble carbohydrate that only a diastatic yeast could take.</summary>
    Dextrin,

    /// <summary>Lactose.</summary>
    Lactose,

    /// <summary>Sugar alcohols.</summary>
    Polyols,

    /// <summary>Sugar a yeast has been offered and has refused.</summary>
    UnusedSugar,

    /// <summary>Starch that heat has opened and no enzyme will meet: it hangs in the liquid as haze.</summary>
    HazeStarch,

    /// <summary>Protein that stays dissolved.</summary>
    Protein,

    /// <summary>Protein that the boil can throw as break.</summary>
    CoagulableProtein,

    /// <summary>Dissolved minerals.</summary>
    Minerals,

    /// <summary>Lactic acid.</summary>
    LacticAcid,

    /// <summary>Acetic acid.</summary>
    AceticAcid,

    /// <summary>Citric acid.</summary>
    CitricAcid,

    /// <summary>Malic acid.</summary>
    MalicAcid,

    /// <summary>Tartaric acid.</summary>
    TartaricAcid,

    /// <summary>Phosphoric acid.</summary>
    PhosphoricAcid,

    /// <summary>Quinic acid and its like.</summary>
    QuinicAcid,

    /// <summary>Ethanol.</summary>
    Ethanol,

    /// <summary>Dissolved carbon dioxide.</summary>
    CarbonDioxide,

    /// <summary>What of the grist can never dissolve.</summary>
    Grain,

    /// <summary>Starch that is open to enzymes.</summary>
    Starch,

    /// <summary>Raw starch that an ordinary mash does not open.</summary>
    RawStarch,

    /// <summary>Fat.</summary>
    Fat,

    /// <summary>What of the foods can never dissolve.</summary>
    FoodSolids,

    /// <summary>Protein and finings thrown by the boil.</summary>
    Break,

    /// <summary>Whole hops, which stay in the kettle.</summary>
    SpentHops,

    /// <summary>Debris of pellets and dry hops, which goes where the liquid goes and then settles.</summary>
    HopMatter,

    /// <summary>Yeast, dry.</summary>
    Yeast,

    /// <summary>Bitterness by the time-and-gravity table: milligrams of iso-alpha acids and their like in the liquid.</summary>
    Bitterness,

    /// <summary>Colour: absorbance per centimetre at 430 nm, times litres.</summary>
    Colour,

    /// <summary>Colour the grist promises: kilograms times degrees Lovibond, spent at knock-out.</summary>
    MaltColour,

    /// <summary>Sodium, milligrams; its mass is part of the minerals.</summary>
    Sodium,

    /// <summary>Calcium that liquor and salts brought, milligrams; its mass is part of the minerals, as that of all ions.</summary>
    Calcium,

    /// <summary>Magnesium that liquor and salts brought, milligrams.</summary>
    Magnesium,

    /// <summary>Potassium that liquor, salts and foods brought, milligrams.</summary>
    Potassium,

    /// <summary>Sulphate that liquor, salts and acids brought, milligrams.</summary>
    Sulphate,

    /// <summary>Chloride that liquor, salts and acids brought, milligrams.</summary>
    Chloride,

    /// <summary>Calcium that foods brought, milligrams: bound in their own acids, it drops no pH.</summary>
    FoodCalcium,

    /// <summary>Magnesium that foods brought, milligrams.</summary>
    FoodMagnesium,

    /// <summary>Phosphorus that foods brought, milligrams of the element.</summary>
    Phosphorus,

    /// <summary>Alkalinity that liquor and salts brought, milligrams as bicarbonate; acids use it up without lessening this tally.</summary>
    Bicarbonate,

    /// <summary>Beer the food solids will hold once settled, kilograms.</summary>
    SettledHold,

    /// <summary>Wort the food solids hold in the bag, kilograms.</summary>
    BagHold,

    /// <summary>Alpha acid in the liquid, milligrams, for the kinetics.</summary>
    AlphaAcid,

    /// <summary>Iso-alpha acid that the kinetics make of it, milligrams.</summary>
    IsoAlphaAcid,

    /// <summary>Malt whose buffering the liquid carries, kilograms as weighed: what acids work against.</summary>
    MaltBuffer,

    /// <summary>Protons that strong acids brought, milliequivalents; their anions and mass are counted elsewhere.</summary>
    StrongAcid,

    /// <summary>Base that foods and dry hops brought, milliequivalents: what of their acids' protons was taken before they went in.</summary>
    PairedBase,
}

/// <summary>Where a component goes when a portion is parted.</summary>
public enum Phase
{
    /// <summary>With the clear liquid.</summary>
    Liquid,

    /// <summary>With the grain.</summary>
    Grain,

    /// <summary>With the solids of foods.</summary>
    Food,

    /// <summary>With the fat.</summary>
    Fat,

    /// <summary>With the whole hops.</summary>
    SpentHops,

    /// <summary>With the fine solids that settle: break, hop debris.</summary>
    Fines,

    /// <summary>With the yeast.</summary>
    Yeast,

    /// <summary>Nowhere: a promise that stays with the portion until it is kept.</summary>
    Promise,
}
