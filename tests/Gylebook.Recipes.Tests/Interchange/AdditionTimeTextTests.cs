using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Tests.Interchange;

public sealed class AdditionTimeTextTests
{
    [Theory]
    [InlineData("mash", AdditionPoint.Mash, 0)]
    [InlineData("copper-up", AdditionPoint.CopperUp, 0)]
    [InlineData("boil 60 min", AdditionPoint.Boil, 60)]
    [InlineData("boil 7.5 min", AdditionPoint.Boil, 7.5)]
    [InlineData("boil 0 min", AdditionPoint.Boil, 0)]
    [InlineData("knock-out", AdditionPoint.KnockOut, 0)]
    [InlineData("stand 20 min", AdditionPoint.Stand, 20)]
    [InlineData("pitch", AdditionPoint.Pitch, 0)]
    [InlineData("ferment day 3", AdditionPoint.Ferment, 3)]
    [InlineData("rack", AdditionPoint.Rack, 0)]
    [InlineData("package", AdditionPoint.Package, 0)]
    public void Each_form_reads_and_writes_back(string text, AdditionPoint point, double count)
    {
        Assert.True(AdditionTimeText.TryParse(text, out var time, out _));
        Assert.Equal(new AdditionTime(point, count), time);
        Assert.Equal(text, AdditionTimeText.Write(time));
    }

    [Theory]
    [InlineData("")]
    [InlineData("boil")]
    [InlineData("boil 60")]
    [InlineData("boil -5 min")]
    [InlineData("boil 1e9 min")]
    [InlineData("boil NaN min")]
    [InlineData("boil 60 h")]
    [InlineData("ferment day 2.5")]
    [InlineData("ferment day")]
    [InlineData("knockout")]
    [InlineData("mash 5 min")]
    [InlineData("boil 60 min now")]
    public void Anything_else_is_told_the_forms(string text)
    {
        Assert.False(AdditionTimeText.TryParse(text, out _, out var problem));
        Assert.Contains("boil N min", problem, StringComparison.Ordinal);
    }
}
