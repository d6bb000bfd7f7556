using Gylebook.Engine.State;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Forecast.Tests.Report;

/// <summary>One place, one order, one file of names.</summary>
public sealed class PlaceTests
{
    /// <summary>In the order in which a brewer comes by them.</summary>
    private static readonly AdditionTime[] Times =
    [
        new(AdditionPoint.Mash), new(AdditionPoint.CopperUp), new(AdditionPoint.Boil, 60), new(AdditionPoint.Boil, 7.5), new(AdditionPoint.KnockOut),
        new(AdditionPoint.Stand, 20), new(AdditionPoint.Stand, 5), new(AdditionPoint.Pitch), new(AdditionPoint.Ferment, 3), new(AdditionPoint.Ferment, 10),
        new(AdditionPoint.Rack), new(AdditionPoint.Package),
    ];

    [Fact]
    public void Places_sort_in_the_order_of_the_brew()
    {
        Place[] places = [.. Times.Select(time => time.ToPlace())];
        Assert.Equal(places, places.Reverse().Order());
        Assert.True(new Place(Stage.Boil) < places[2], "what holds for the whole boil comes before its minutes");
    }

    [Fact]
    public void A_place_is_said_as_the_recipe_writes_it() => Assert.Equal(
        ["mash", "copper-up", "boil 60 min", "boil 7.5 min", "knock-out", "stand 20 min", "stand 5 min", "pitch", "ferment day 3", "ferment day 10", "rack", "package"],
        Times.Select(time => Names.Said(time.ToPlace())));

    [Fact]
    public void Every_stage_and_loss_has_names_of_its_own()
    {
        Stage[] stages = Enum.GetValues<Stage>();
        Loss[] losses = Enum.GetValues<Loss>();
        Assert.Equal(stages.Length, stages.Select(Names.Of).Distinct().Count());
        Assert.Equal(stages.Length, stages.Select(stage => Names.Said(stage)).Distinct().Count());
        Assert.Equal(stages.Length, stages.Select(Names.Reached).Distinct().Count());
        Assert.Equal(losses.Length, losses.Select(loss => Names.Said(loss)).Distinct().Count());
    }
}
