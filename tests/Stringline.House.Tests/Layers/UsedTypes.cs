using System.Collections.Immutable;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Stringline.House.Tests.Layers;

/// <summary>A type that is used by another of the same assembly. Of nested types the outermost stands for all.</summary>
/// <param name="User">The full name of the type that uses.</param>
/// <param name="Used">The full name of the type that is used.</param>
internal readonly record struct Use(string User, string Used);

/// <summary>
/// Which types of an assembly use which, as they are compiled: in their members, their marks and the bodies of their methods, however a
/// name is written in the source. A constant is copied where it is compiled, so its use is not seen here.
/// </summary>
internal sealed class UsedTypes : ISignatureTypeProvider<int, int>
{
    private static readonly OperandType?[] Short = Operands(two: false);
    private static readonly OperandType?[] Long = Operands(two: true);

    private readonly HashSet<Use> uses = [];
    private readonly MetadataReader reader;
    private string user = "";

    private UsedTypes(PEReader file)
    {
        reader = file.GetMetadataReader();
        foreach (var handle in reader.TypeDefinitions)
        {
            var type = reader.GetTypeDefinition(handle);
            user = Outermost(handle);
            Token(type.BaseType);
            foreach (var contract in type.GetInterfaceImplementations())
                Token(reader.GetInterfaceImplementation(contract).Interface);
            Constraints(type.GetGenericParameters());
            foreach (var field in type.GetFields())
                reader.GetFieldDefinition(field).DecodeSignature(this, 0);
            foreach (var member in type.GetMethods())
                Method(file, reader.GetMethodDefinition(member));
        }

        // A mark is of the type that it stands on, or whose member it stands on.
        foreach (var handle in reader.CustomAttributes)
        {
            var mark = reader.GetCustomAttribute(handle);
            if (Owner(mark.Parent) is not { } owner)
                continue;
            user = Outermost(owner);
            Token(mark.Constructor);
        }
    }

    /// <summary>The uses in an assembly.</summary>
    public static IReadOnlyCollection<Use> In(string assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly));
        return new UsedTypes(file).uses;
    }

    private void Method(PEReader file, MethodDefinition method)
    {
        method.DecodeSignature(this, 0);
        Constraints(method.GetGenericParameters());
        if (method.RelativeVirtualAddress == 0)
            return;
        var body = file.GetMethodBody(method.RelativeVirtualAddress);
        if (!body.LocalSignature.IsNil)
            reader.GetStandaloneSignature(body.LocalSignature).DecodeLocalSignature(this, 0);
        foreach (var region in body.ExceptionRegions)
            Token(region.CatchType);
        Code(body.GetILReader());
    }

    private void Code(BlobReader code)
    {
        while (code.RemainingBytes > 0)
        {
            var first = code.ReadByte();
            var operand =
                (first == 0xFE ? Long[code.ReadByte()] : Short[first]) ?? throw new BadImageFormatException("No such instruction.");
            switch (operand)
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    Token(MetadataTokens.EntityHandle(code.ReadInt32()));
                    break;
                case OperandType.InlineSwitch:
                    var count = code.ReadInt32();
                    code.Offset += 4 * count;
                    break;
                case OperandType.InlineNone:
                    break;
                case OperandType.InlineVar:
                    code.Offset += 2;
                    break;
                case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                    code.Offset += 1;
                    break;
                case OperandType.InlineI8 or OperandType.InlineR:
                    code.Offset += 8;
                    break;
                default:
                    code.Offset += 4;
                    break;
            }
        }
    }

    private void Token(EntityHandle handle)
    {
        if (handle.IsNil)
            return;
        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                uses.Add(new Use(user, Outermost((TypeDefinitionHandle)handle)));
                break;
            case HandleKind.TypeSpecification:
                reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, 0);
                break;
            case HandleKind.MethodDefinition:
                var method = reader.GetMethodDefinition((MethodDefinitionHandle)handle);
                Token(method.GetDeclaringType());
                method.DecodeSignature(this, 0);
                break;
            case HandleKind.FieldDefinition:
                var field = reader.GetFieldDefinition((FieldDefinitionHandle)handle);
                Token(field.GetDeclaringType());
                field.DecodeSignature(this, 0);
                break;
            case HandleKind.MemberReference:
                var member = reader.GetMemberReference((MemberReferenceHandle)handle);
                Token(member.Parent);
                if (member.GetKind() == MemberReferenceKind.Method)
                    member.DecodeMethodSignature(this, 0);
                else
                    member.DecodeFieldSignature(this, 0);
                break;
            case HandleKind.MethodSpecification:
                var made = reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                Token(made.Method);
                made.DecodeSignature(this, 0);
                break;
        }
    }

    private void Constraints(GenericParameterHandleCollection parameters)
    {
        foreach (var handle in parameters)
        {
            foreach (var constraint in reader.GetGenericParameter(handle).GetConstraints())
                Token(reader.GetGenericParameterConstraint(constraint).Type);
        }
    }

    private TypeDefinitionHandle? Owner(EntityHandle parent) => parent.Kind switch
    {
        HandleKind.TypeDefinition => (TypeDefinitionHandle)parent,
        HandleKind.MethodDefinition => reader.GetMethodDefinition((MethodDefinitionHandle)parent).GetDeclaringType(),
        HandleKind.FieldDefinition => reader.GetFieldDefinition((FieldDefinitionHandle)parent).GetDeclaringType(),
        _ => null,
    };

    private string Outermost(TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        while (type.GetDeclaringType() is { IsNil: false } outer)
            type = reader.GetTypeDefinition(outer);
        return $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}";
    }

    private static OperandType?[] Operands(bool two)
    {
        var operands = new OperandType?[256];
        foreach (var field in typeof(OpCodes).GetFields())
        {
            if (field.GetValue(null) is OpCode code && (code.Size == 2) == two)
                operands[code.Value & 0xFF] = code.OperandType;
        }

        return operands;
    }

    int ISignatureTypeProvider<int, int>.GetTypeFromSpecification(
        MetadataReader metadata, int context, TypeSpecificationHandle handle, byte rawTypeKind)
    {
        Token(handle);
        return 0;
    }

    int ISimpleTypeProvider<int>.GetTypeFromDefinition(MetadataReader metadata, TypeDefinitionHandle handle, byte rawTypeKind)
    {
        Token(handle);
        return 0;
    }

    int ISimpleTypeProvider<int>.GetTypeFromReference(MetadataReader metadata, TypeReferenceHandle handle, byte rawTypeKind) => 0;

    int ISimpleTypeProvider<int>.GetPrimitiveType(PrimitiveTypeCode typeCode) => 0;

    int ISignatureTypeProvider<int, int>.GetFunctionPointerType(MethodSignature<int> signature) => 0;

    int ISignatureTypeProvider<int, int>.GetGenericMethodParameter(int context, int index) => 0;

    int ISignatureTypeProvider<int, int>.GetGenericTypeParameter(int context, int index) => 0;

    int ISignatureTypeProvider<int, int>.GetModifiedType(int modifier, int unmodified, bool isRequired) => 0;

    int ISignatureTypeProvider<int, int>.GetPinnedType(int element) => 0;

    int IConstructedTypeProvider<int>.GetArrayType(int element, ArrayShape shape) => 0;

    int IConstructedTypeProvider<int>.GetByReferenceType(int element) => 0;

    int IConstructedTypeProvider<int>.GetGenericInstantiation(int generic, ImmutableArray<int> arguments) => 0;

    int IConstructedTypeProvider<int>.GetPointerType(int element) => 0;

    int ISZArrayTypeProvider<int>.GetSZArrayType(int element) => 0;
}
