using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Interchange;

/// <summary>A titration somebody made: the pH in distilled water, and the buffer.</summary>
internal static class TitrationForm
{
    public static ValueForm<double> Ph { get; } = Leaves.Number(2, 9);

    public static ValueForm<double> Buffer { get; } = Leaves.Number(1, 2000);

    public static FieldNotes PhNotes { get; } = new("pH of its mash in distilled water, cooled.") { IsAlwaysWritten = true };

    public static FieldNotes BufferNotes { get; } = new("Acid that a kilogram takes to fall by one pH, in mEq/(kg·pH).") { IsAlwaysWritten = true };

    /// <summary>One that must be whole.</summary>
    public static Form<MaltTitration> Whole { get; } = new Form<MaltTitration>(new MaltTitration(0, 0, 0, Provenance.Entered))
        .Need("distilledPh", "pH in distilled water", Ph, t => t.DistilledPh, (t, v) => t with { DistilledPh = v }, PhNotes)
        .Need("buffer", "buffer", Buffer, t => t.Buffer, (t, v) => t with { Buffer = v }, BufferNotes);
}
