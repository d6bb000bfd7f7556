namespace Gylebook.Science.Foods.Words;

/// <summary>What a word of an ingredient list brings that a brewer must know of.</summary>
public enum IngredientKind
{
    /// <summary>Sugar alcohol: no yeast takes it.</summary>
    SugarAlcohol,

    /// <summary>Milk sugar: brewer's yeast does not take it.</summary>
    Lactose,

    /// <summary>Glucose, corn or rice syrup, dextrin: partly dextrins.</summary>
    GlucoseSyrup,

    /// <summary>Glucose syrup or dextrin of wheat: exempt in the EU, wheat in the US.</summary>
    WheatSyrup,

    /// <summary>Glucose syrup of barley: exempt in the EU.</summary>
    BarleySyrup,

    /// <summary>Sorbic acid or a sorbate, E200 to E203.</summary>
    Sorbate,

    /// <summary>Benzoic acid or a benzoate, E210 to E213.</summary>
    Benzoate,

    /// <summary>Sulphur dioxide or a sulphite, E220 to E228.</summary>
    Sulphite,

    /// <summary>Natamycin, E235.</summary>
    Natamycin,

    /// <summary>Dimethyl dicarbonate, E242.</summary>
    DimethylDicarbonate,

    /// <summary>Vinegar or acetic acid.</summary>
    Vinegar,

    /// <summary>Milk.</summary>
    Milk,

    /// <summary>Egg.</summary>
    Egg,

    /// <summary>Egg that was not heated.</summary>
    RawEgg,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Fish bladder finings: fish in the US, exempt as a fining in the EU.</summary>
    Isinglass,

    /// <summary>Crustacean shellfish.</summary>
    Crustacean,

    /// <summary>Mollusc: EU only.</summary>
    Mollusc,

    /// <summary>Tree nut in both lists.</summary>
    TreeNut,

    /// <summary>Tree nut in the US list only: pine nut.</summary>
    TreeNutUsOnly,

    /// <summary>Taken off the US list of tree nuts in January 2025, and never on the EU list: coconut, chestnut.</summary>
    NutNoLongerUs,

    /// <summary>Peanut.</summary>
    Peanut,

    /// <summary>Wheat, spelt, khorasan.</summary>
    Wheat,

    /// <summary>Barley: EU only.</summary>
    Barley,

    /// <summary>Rye: EU only.</summary>
    Rye,

    /// <summary>Oats: EU only.</summary>
    Oats,

    /// <summary>Soybean.</summary>
    Soy,

    /// <summary>Lecithin that does not say what it is from: soy, egg or neither.</summary>
    LecithinOfUnknownOrigin,

    /// <summary>Sesame.</summary>
    Sesame,

    /// <summary>Celery: EU only.</summary>
    Celery,

    /// <summary>Mustard: EU only.</summary>
    Mustard,

    /// <summary>Lupin: EU only.</summary>
    Lupin,

    /// <summary>A source of caffeine or theobromine.</summary>
    Caffeine,

    /// <summary>Cinnamon that may be cassia, with coumarin.</summary>
    Cinnamon,

    /// <summary>Ceylon cinnamon, with little coumarin.</summary>
    CeylonCinnamon,

    /// <summary>Nutmeg or mace.</summary>
    Nutmeg,

    /// <summary>Tonka bean or coumarin: not allowed in food in the US.</summary>
    TonkaBean,

    /// <summary>Liquorice.</summary>
    Liquorice,

    /// <summary>Alcohol.</summary>
    Alcohol,

    /// <summary>Sassafras, safrole or calamus: not allowed in food in the US.</summary>
    SafroleOrCalamus,

    /// <summary>Kernels of stone fruit: cyanide.</summary>
    StoneFruitKernel,

    /// <summary>Raisins, grapes, macadamia: they can kill dogs.</summary>
    PoisonsDogs,

    /// <summary>Grapefruit: changes how some medicines act.</summary>
    Grapefruit,
}
