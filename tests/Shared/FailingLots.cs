using System.Collections;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Lots;

namespace Gylebook.Tests.Shared;

/// <summary>Lots of a food, one called "one", that throw when they are looked through, once something is broken.</summary>
internal sealed class FailingLots(Func<bool> isBroken, string why) : IReadOnlyList<Lot<FoodComposition>>
{
    private readonly Lot<FoodComposition>[] _lots = [new() { Name = "one" }];

    public int Count => _lots.Length;

    public Lot<FoodComposition> this[int index] => _lots[index];

    public IEnumerator<Lot<FoodComposition>> GetEnumerator() =>
        isBroken() ? throw new InvalidOperationException(why) : ((IEnumerable<Lot<FoodComposition>>)_lots).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
