using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Gylebook.Store.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Gylebook.Store;

/// <summary>What a row carries to show that the disk still gives back what was written: see decision 0014.</summary>
internal static class RowChecksum
{
    /// <summary>What is summed of a row, by name of column. The number a row gets while it is written is not.</summary>
    public static IReadOnlyList<IProperty> Summed(IEntityType entity) =>
    [
        .. entity.GetProperties()
            .Where(property => property.Name != nameof(ISealedRow.Checksum) && !(property.IsPrimaryKey() && property.ClrType == typeof(long)))
            .OrderBy(property => property.GetColumnName(), StringComparer.Ordinal),
    ];

    /// <summary>The checksum of values as the database holds them: texts, whole numbers, reals, nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value of another kind: the caller's bug.</exception>
    public static long Of(IEnumerable<object?> values)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (object? value in values)
        {
            Append(hash, value);
        }

        // 64 bits suffice against chance; nobody is kept from forging here, who could write the file anyway.
        return BinaryPrimitives.ReadInt64LittleEndian(hash.GetHashAndReset());
    }

    /// <summary>Gives every row that is about to be written the checksum of what it will say.</summary>
    /// <remarks>A row that was damaged when read stays marked so, unless one of its texts is written anew.</remarks>
    public static void Seal(ChangeTracker tracker)
    {
        foreach (EntityEntry<ISealedRow> entry in tracker.Entries<ISealedRow>())
        {
            bool isWritten = entry.State == EntityState.Added || (entry.State == EntityState.Modified && (WasSound(entry) || HasNewText(entry)));
            if (isWritten)
            {
                entry.Entity.Checksum = Of(Summed(entry.Metadata).Select(p => Stored(p, entry.CurrentValues[p])));
            }
        }
    }

    /// <summary>Whether a row, as it was read, is what was written.</summary>
    public static bool IsSound(BookContext context, ISealedRow row)
    {
        EntityEntry entry = context.Entry((object)row);
        return row.Checksum == Of(Summed(entry.Metadata).Select(p => Stored(p, entry.CurrentValues[p])));
    }

    private static bool WasSound(EntityEntry<ISealedRow> entry) =>
        entry.Property(row => row.Checksum).OriginalValue == Of(Summed(entry.Metadata).Select(p => Stored(p, entry.OriginalValues[p])));

    private static bool HasNewText(EntityEntry<ISealedRow> entry) =>
        entry.Properties.Any(property => property.IsModified && property.Metadata.ClrType == typeof(string));

    private static object? Stored(IProperty property, object? value)
    {
        object? stored = property.GetTypeMapping().Converter is { } converter ? converter.ConvertToProvider(value) : value;
        return stored switch
        {
            Guid id => id.ToString().ToUpperInvariant(),
            bool flag => flag ? 1L : 0L,
            int number => (long)number,
            _ => stored,
        };
    }

    private static void Append(IncrementalHash hash, object? value)
    {
        (byte kind, byte[] bytes) = value switch
        {
            null or DBNull => ((byte)0, Array.Empty<byte>()),
            long number => ((byte)1, Bytes(number)),
            double real => ((byte)2, Bytes(BitConverter.DoubleToInt64Bits(real))),
            string text => ((byte)3, Encoding.UTF8.GetBytes(text)),
            byte[] blob => ((byte)4, blob),
            _ => throw new ArgumentOutOfRangeException(nameof(value), value, "A database holds texts, numbers and bytes only."),
        };
        hash.AppendData([kind]);
        hash.AppendData(Bytes(bytes.Length));
        hash.AppendData(bytes);
    }

    private static byte[] Bytes(long number)
    {
        byte[] bytes = new byte[sizeof(long)];
        BinaryPrimitives.WriteInt64LittleEndian(bytes, number);
        return bytes;
    }
}
