using Gylebook.Recipes.Interchange;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Schemas;

/// <summary>The page of all fields is made from the forms. <c>GYLEBOOK_APPROVE=1</c> writes it anew.</summary>
public sealed class FieldsPageTests
{
    [Fact]
    public void The_page_of_fields_is_the_one_the_forms_make()
    {
        string path = RepositoryFile.PathOf("docs/guide/fields.md");
        string made = FieldsPage.Print(FileForms.All);
        if (Environment.GetEnvironmentVariable("GYLEBOOK_APPROVE") == "1")
        {
            File.WriteAllText(path, made);
        }

        Assert.Equal(File.ReadAllText(path), made);
    }
}
