using System.Reflection;
using System.Runtime.CompilerServices;

namespace Nestmark.Tests.Conventions;

/// <summary>House rules that the compiler cannot see, over every public type of every project under src.</summary>
public sealed class PublicTypesTests
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly string[] Units = ["Micrometers", "Millimeters", "Centimeters", "Meters", "Inches", "Yards", "Degrees", "Ratio", "Seconds"];

    private static readonly Type[] PublicTypes = [.. Projects.Names
        .Select(name => Assembly.Load(name == "Nestmark.Cli" ? "nestmark" : name))
        .SelectMany(assembly => assembly.GetExportedTypes())
        .Where(type => type.GetCustomAttribute<CompilerGeneratedAttribute>() is null)];

    [Fact]
    public void There_are_public_types_to_look_at() => Assert.True(PublicTypes.Length > 40, $"only {PublicTypes.Length}");

    [Fact]
    public void Names_of_public_doubles_end_in_their_unit() => Assert.DoesNotContain(
        PublicTypes.SelectMany(DoubleNames), name => !Units.Any(unit => name.TrimEnd(')').EndsWith(unit, StringComparison.OrdinalIgnoreCase)));

    [Fact]
    public void No_public_property_can_be_set_after_it_is_made() => Assert.Empty(
        from type in PublicTypes
        from property in type.GetProperties(Declared)
        where property.SetMethod is { IsPublic: true } setter
            && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
        select $"{type.Name}.{property.Name}");

    [Fact]
    public void Public_fields_are_constants_or_read_only() => Assert.Empty(
        from type in PublicTypes
        where !type.IsEnum
        from field in type.GetFields(Declared)
        where !field.IsLiteral && !field.IsInitOnly
        select $"{type.Name}.{field.Name}");

    [Fact]
    public void Public_classes_are_sealed_or_static_or_abstract() => Assert.Empty(
        PublicTypes.Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract).Select(type => type.Name));

    [Fact]
    public void Public_structs_are_read_only() => Assert.Empty(
        PublicTypes.Where(type => type.IsValueType && !type.IsEnum && type.GetCustomAttribute<IsReadOnlyAttribute>() is null).Select(type => type.Name));

    [Fact]
    public void No_public_method_takes_a_bool() => Assert.Empty(
        from type in PublicTypes
        from method in type.GetMethods(Declared).Cast<MethodBase>().Concat(type.GetConstructors(Declared))
        where !method.IsSpecialName || method.IsConstructor
        from parameter in method.GetParameters()
        where parameter.ParameterType == typeof(bool) && !parameter.IsOut
        select $"{type.Name}.{method.Name}({parameter.Name})");

    private static IEnumerable<string> DoubleNames(Type type)
    {
        foreach (PropertyInfo property in type.GetProperties(Declared).Where(property => IsDouble(property.PropertyType)))
            yield return $"{type.Name}.{property.Name}";
        foreach (FieldInfo field in type.GetFields(Declared).Where(field => IsDouble(field.FieldType)))
            yield return $"{type.Name}.{field.Name}";
        IEnumerable<MethodBase> methods = type.GetMethods(Declared).Where(method => !method.IsSpecialName).Cast<MethodBase>().Concat(type.GetConstructors(Declared));
        foreach (ParameterInfo parameter in methods.SelectMany(method => method.GetParameters()).Where(parameter => IsDouble(parameter.ParameterType)))
            yield return $"{type.Name}.{parameter.Member.Name}({parameter.Name})";
    }

    private static bool IsDouble(Type type) => type == typeof(double) || type == typeof(double?) || type == typeof(double).MakeByRefType();
}
