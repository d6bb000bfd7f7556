using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Schemas;

/// <summary>The published schemas of what we read are made from the forms. <c>GYLEBOOK_APPROVE=1</c> writes them anew.</summary>
public sealed class MadeSchemaTests
{
    public static TheoryData<string> Nouns() => [.. FileForms.All.Select(form => form.Noun)];

    [Theory]
    [MemberData(nameof(Nouns))]
    public void A_published_schema_is_the_one_its_form_makes(string noun)
    {
        FileForm form = FileForms.All.Single(form => form.Noun == noun);
        string path = RepositoryFile.PathOf($"docs/schema/{noun}.schema.json");
        if (Environment.GetEnvironmentVariable("GYLEBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, form.Schema());
        }

        Assert.Equal(File.ReadAllText(path), form.Schema());
    }
}
