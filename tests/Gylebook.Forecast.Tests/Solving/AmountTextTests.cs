using Gylebook.Forecast.Ingredients;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Tests.Solving;

public sealed class AmountTextTests
{
    [Theory]
    [InlineData(IngredientKind.Malt, "3.6 kg", 3.8562, "3.86 kg")]
    [InlineData(IngredientKind.Malt, "0.5 kg", 0.51234, "0.512 kg")]
    [InlineData(IngredientKind.Malt, "500 g", 0.51234, "512 g")]
    [InlineData(IngredientKind.Malt, "1500 g", 1.53678, "1540 g")]
    [InlineData(IngredientKind.Hop, "28 g", 0.03149, "31.5 g")]
    [InlineData(IngredientKind.Hop, "120 g", 0.15678, "156.8 g")]
    [InlineData(IngredientKind.Malt, "8 lb", 4.5359237, "10 lb")]
    [InlineData(IngredientKind.Hop, "1,5 oz", 0.056699046, "2 oz")]
    [InlineData(IngredientKind.Hop, "1 oz", 0.0351, "1.24 oz")]
    public void Weights_are_written_in_the_unit_they_replace_as_a_scale_shows_them(IngredientKind kind, string before, double kilograms, string after)
    {
        Assert.True(UnitTable.TryParse(before, out Entered<Mass> mass, out _));
        IngredientLine line = new() { Kind = kind, Of = "anything", Amount = new Amount(mass, null), At = default };
        Entered<Mass> written = AmountText.Of(line, kilograms);
        Assert.Equal(after, written.Text);
        Assert.True(UnitTable.TryParse(written.Text, out Entered<Mass> read, out _));
        Assert.Equal(read.Value, written.Value);
    }
}
