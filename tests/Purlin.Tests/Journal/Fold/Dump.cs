using System.Collections;
using System.Reflection;
using System.Text;

namespace Purlin.Tests.Journal.Fold;

/// <summary>A state written out member by member, so that two states can be compared for meaning: records that hold lists compare by reference.</summary>
internal static class Dump
{
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Write(text, value, 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, int depth)
    {
        var indent = new string(' ', depth);
        switch (value)
        {
            case null:
                text.Append("none\n");
                break;
            case string or ValueType:
                text.Append(value).Append('\n');
                break;
            case IDictionary dictionary:
                text.Append('\n');
                foreach (var key in dictionary.Keys.Cast<object>().OrderBy(key => $"{key}", StringComparer.Ordinal)) Member(text, indent, $"{key}", dictionary[key], depth);
                break;
            case IEnumerable items:
                text.Append('\n');
                foreach (var item in items) Member(text, indent, "-", item, depth);
                break;
            default:
                text.Append('\n');
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0))
                    Member(text, indent, property.Name, property.GetValue(value), depth);
                break;
        }
    }

    private static void Member(StringBuilder text, string indent, string name, object? value, int depth)
    {
        text.Append(indent).Append(name).Append(' ');
        Write(text, value, depth + 1);
    }
}
