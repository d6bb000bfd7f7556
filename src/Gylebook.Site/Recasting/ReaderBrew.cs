using Gylebook.Gyles.Plans;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Site.Recasting;

/// <summary>The published files as a follower would write them: their kettle, their hops, their way to mash. Edited as drafts are, so that a wrong field is told as everywhere.</summary>
internal sealed class ReaderBrew
{
    /// <summary>What belongs to a thing, and not to the one that takes its place.</summary>
    private static readonly string[] OfTheThing = ["as", "lot", "colour", "alpha", "form", "age", "storage", "cells", "attenuation"];

    private readonly ReaderWords _words;
    private readonly GyleInputs _published;
    private FileDraft<Kit> _kit;
    private RecipeDraft _recipe;

    private ReaderBrew(GyleFiles files, GyleInputs published, ReaderWords words)
    {
        (_words, _published) = (words, published);
        (_kit, _recipe) = (FileDraft.Of(KitFile.Form, files.Kit), RecipeDraft.Of(files.Recipe));
    }

    /// <summary>The kit as the follower has it; null while a field cannot be read.</summary>
    public Kit? Kit => _kit.Value;

    /// <summary>The recipe with the follower's hops, swaps and mash; its amounts as published. Null while a field cannot be read.</summary>
    public Recipe? Recipe => _recipe.Recipe;

    /// <summary>The recipe's file, to be weighed anew.</summary>
    public RecipeDraft Draft => _recipe;

    /// <summary>How much beer is wanted; null while that cannot be read.</summary>
    public Entered<VolumeAt20C>? Beer { get; private set; }

    /// <summary>Whether what goes in, or how it is mashed, is no longer what was published.</summary>
    public bool HasOthers { get; private set; }

    /// <summary>What cannot be read.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>The files with all that was typed.</summary>
    public static ReaderBrew Of(GyleFiles files, GyleInputs published, ReaderWords words)
    {
        ReaderBrew theirs = new(files, published, words);
        theirs.PutMethod();
        theirs.PutSwaps();
        theirs.PutFields();
        theirs.PutUsable();
        theirs.ReadBeer();
        theirs.Findings.AddRange(theirs._kit.Findings.Select(finding => finding with { Where = $"kit.{finding.Where}" }).Concat(theirs._recipe.Findings));
        return theirs;
    }

    private void PutMethod()
    {
        if (_words[ReaderField.Method] is not { } method || !ReaderField.AsksMethod(_published.Recipe))
        {
            return;
        }

        bool isTun = method == ReaderField.MashTun;
        if (isTun == (_published.Recipe.Mash!.Method == MashMethod.Tun))
        {
            return;
        }

        HasOthers = true;
        _recipe = _recipe.Put("mash.method", method)?.After ?? _recipe;
        if (_published.Recipe.Mash.Sparge.Method != SpargeMethod.None)
        {
            _recipe = _recipe.Put("mash.sparge.method", isTun ? "batch" : "pour")?.After ?? _recipe;
        }

        _kit = isTun && _published.Kit.Tun is null ? _kit.AddPart(ReaderField.MashTun, UsualParts.Tun).After
            : !isTun && _published.Kit.Bag is null ? _kit.AddPart(ReaderField.MashBag, UsualParts.Bag).After
            : _kit;
    }

    private void PutSwaps()
    {
        for (int swap = 1; swap <= ReaderField.MostSwaps; swap++)
        {
            if (_words[ReaderField.Without(swap)] is { } without && _words[ReaderField.Instead(swap)] is { } instead
                && int.TryParse(without, System.Globalization.NumberStyles.None, null, out int number) && number < _published.Recipe.Ingredients.Count)
            {
                string line = Invariant($"ingredients[{number}]");
                _recipe = OfTheThing.Aggregate(_recipe, (recipe, key) => recipe.Drop($"{line}.{key}")?.After ?? recipe);
                _recipe = _recipe.Put($"{line}.{_recipe.Lines[number].KindKey}", instead)?.After ?? _recipe;
                HasOthers = true;
            }
        }
    }

    private void PutFields()
    {
        foreach (ReaderField field in ReaderField.Of(_published.Recipe, _published.Kit))
        {
            if (field.Key == ReaderField.Beer || _words[field.Key] is not { } typed)
            {
                continue;
            }

            if (field.IsOfKit)
            {
                _kit = field.With is null || _kit.Has(field.With) ? _kit.Put(field.Path, typed)?.After ?? _kit : _kit;
            }
            else if (_recipe.Put(field.Path, typed) is { } edit)
            {
                (_recipe, HasOthers) = (edit.After, true);
            }
        }
    }

    /// <summary>Of a vessel the brim is asked; at work it holds the share of it that the published one does.</summary>
    private void PutUsable()
    {
        _kit = Usable("kettle", _published.Kit.Kettle.Brim, _published.Kit.Kettle.Usable, _kit.Value?.Kettle.Brim);
        _kit = Usable("fermenter", _published.Kit.Fermenter.Brim, _published.Kit.Fermenter.Usable, _kit.Value?.Fermenter.Brim);
    }

    private FileDraft<Kit> Usable(string vessel, Entered<VolumeAt20C> brim, Entered<VolumeAt20C> usable, Entered<VolumeAt20C>? now) =>
        now is { } theirs && theirs.Value.Litres != brim.Value.Litres
            ? _kit.Put($"{vessel}.usable", Invariant($"{theirs.Value.Litres * usable.Value.Litres / brim.Value.Litres:0.##} L"))?.After ?? _kit
            : _kit;

    private void ReadBeer()
    {
        const string Path = "package.volume";
        RecipeDraft wished = _words[ReaderField.Beer] is { } typed ? _recipe.Put(Path, typed)?.After ?? _recipe : _recipe;
        Findings.AddRange(wished.Findings.Where(finding => finding.Where == Path));
        Beer = wished.Recipe?.Package.Volume;
    }
}
