using System.Collections.Immutable;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Gylebook.Layering.Tests;

/// <summary>The types of its own assembly that a type names: in its bases, fields, signatures and the bodies of its methods.</summary>
/// <remarks>Constants, and types inside attributes, leave no trace in what the compiler writes, and are not seen.</remarks>
internal sealed class TypeTokens(PEReader file)
{
    private static readonly Dictionary<int, OperandType> Operands = typeof(OpCodes).GetFields()
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(code => (int)(ushort)code.Value, code => code.OperandType);

    private readonly MetadataReader _reader = file.GetMetadataReader();

    /// <summary>All that one type names, itself among them.</summary>
    public IReadOnlySet<TypeDefinitionHandle> Of(TypeDefinitionHandle handle)
    {
        Named named = new(_reader);
        TypeDefinition type = _reader.GetTypeDefinition(handle);
        Name(type.BaseType, named);
        foreach (InterfaceImplementationHandle each in type.GetInterfaceImplementations())
        {
            Name(_reader.GetInterfaceImplementation(each).Interface, named);
        }

        foreach (FieldDefinitionHandle each in type.GetFields())
        {
            _reader.GetFieldDefinition(each).DecodeSignature(named, null);
        }

        foreach (MethodDefinitionHandle each in type.GetMethods())
        {
            MethodDefinition method = _reader.GetMethodDefinition(each);
            method.DecodeSignature(named, null);
            if (method.RelativeVirtualAddress != 0)
            {
                Read(file.GetMethodBody(method.RelativeVirtualAddress), named);
            }
        }

        return named.Types;
    }

    private void Read(MethodBodyBlock body, Named named)
    {
        if (!body.LocalSignature.IsNil)
        {
            _reader.GetStandaloneSignature(body.LocalSignature).DecodeLocalSignature(named, null);
        }

        BlobReader code = body.GetILReader();
        while (code.RemainingBytes > 0)
        {
            int first = code.ReadByte();
            int opCode = first == 0xFE ? (first << 8) | code.ReadByte() : first;
            switch (Operands[opCode])
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    Name(MetadataTokens.EntityHandle(code.ReadInt32()), named);
                    break;
                case OperandType.InlineSwitch:
                    int ways = code.ReadInt32();
                    code.Offset += 4 * ways;
                    break;
                case OperandType other:
                    code.Offset += SizeOf(other);
                    break;
            }
        }
    }

    private static int SizeOf(OperandType operand) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        _ => 4,
    };

    private void Name(EntityHandle handle, Named named)
    {
        if (handle.IsNil)
        {
            return;
        }

        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                named.Types.Add((TypeDefinitionHandle)handle);
                break;
            case HandleKind.TypeSpecification:
                _reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(named, null);
                break;
            case HandleKind.FieldDefinition:
                named.Types.Add(_reader.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MethodDefinition:
                named.Types.Add(_reader.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MemberReference:
                NameMember(_reader.GetMemberReference((MemberReferenceHandle)handle), named);
                break;
            case HandleKind.MethodSpecification:
                MethodSpecification method = _reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                method.DecodeSignature(named, null);
                Name(method.Method, named);
                break;
        }
    }

    private void NameMember(MemberReference member, Named named)
    {
        Name(member.Parent, named);
        if (member.GetKind() == MemberReferenceKind.Field)
        {
            member.DecodeFieldSignature(named, null);
        }
        else
        {
            member.DecodeMethodSignature(named, null);
        }
    }

    /// <summary>Keeps the types of this assembly that signatures are made of; what they are besides does not matter here.</summary>
    private sealed class Named(MetadataReader own) : ISignatureTypeProvider<object?, object?>
    {
        public HashSet<TypeDefinitionHandle> Types { get; } = [];

        public object? GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind)
        {
            Types.Add(handle);
            return null;
        }

        public object? GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
            own.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

        public object? GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => null;

        public object? GetPrimitiveType(PrimitiveTypeCode typeCode) => null;

        public object? GetArrayType(object? elementType, ArrayShape shape) => null;

        public object? GetSZArrayType(object? elementType) => null;

        public object? GetByReferenceType(object? elementType) => null;

        public object? GetPointerType(object? elementType) => null;

        public object? GetPinnedType(object? elementType) => null;

        public object? GetFunctionPointerType(MethodSignature<object?> signature) => null;

        public object? GetGenericInstantiation(object? genericType, ImmutableArray<object?> typeArguments) => null;

        public object? GetGenericMethodParameter(object? genericContext, int index) => null;

        public object? GetGenericTypeParameter(object? genericContext, int index) => null;

        public object? GetModifiedType(object? modifier, object? unmodifiedType, bool isRequired) => null;
    }
}
