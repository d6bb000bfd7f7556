using System.Text;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Gylebook.Store;

/// <summary>Names tables, columns, keys and indexes the way SQL is written by hand.</summary>
internal static class SnakeCase
{
    public static void Apply(ModelBuilder model)
    {
        foreach (IMutableEntityType entity in model.Model.GetEntityTypes())
        {
            string table = Of(entity.GetTableName()!);
            entity.SetTableName(table);
            foreach (IMutableProperty property in entity.GetProperties())
            {
                property.SetColumnName(Of(property.Name));
            }

            foreach (IMutableKey key in entity.GetKeys())
            {
                key.SetName("pk_" + table);
            }

            foreach (IMutableForeignKey key in entity.GetForeignKeys())
            {
                key.SetConstraintName($"fk_{table}_{Columns(key.Properties)}");
            }

            foreach (IMutableIndex index in entity.GetIndexes())
            {
                index.SetDatabaseName($"ix_{table}_{Columns(index.Properties)}");
            }
        }
    }

    private static string Columns(IEnumerable<IMutableProperty> properties) =>
        string.Join('_', properties.Select(p => Of(p.Name)));

    private static string Of(string name)
    {
        var snake = new StringBuilder(name.Length + 4);
        foreach (char letter in name)
        {
            if (char.IsUpper(letter) && snake.Length > 0)
            {
                snake.Append('_');
            }

            snake.Append(char.ToLowerInvariant(letter));
        }

        return snake.ToString();
    }
}
