namespace Gylebook.Engine.State;

/// <summary>One entry of a reaction: kilograms made (or, below zero, used) per kilogram of what reacts.</summary>
/// <param name="Component">Which.</param>
/// <param name="PerKilogram">How much.</param>
public readonly record struct ReactionTerm(Component Component, double PerKilogram);

/// <summary>A row of a reaction table. Its terms sum to zero: water is a term like any other.</summary>
/// <param name="Reactant">What reacts.</param>
/// <param name="Terms">All it makes and uses, the reactant itself included.</param>
public sealed record Reaction(Component Reactant, ReactionTerm[] Terms)
{
    /// <summary>Kilograms of a product that a kilogram of the reactant makes; 0 when it makes none.</summary>
    public double Makes(Component product)
    {
        foreach (ReactionTerm term in Terms)
        {
            if (term.Component == product)
            {
                return term.PerKilogram;
            }
        }

        return 0;
    }

    /// <summary>Lets that many kilograms of the reactant react.</summary>
    public void Run(ref Wort wort, double kilograms)
    {
        foreach (ReactionTerm term in Terms)
        {
            wort[term.Component] += term.PerKilogram * kilograms;
        }
    }
}
