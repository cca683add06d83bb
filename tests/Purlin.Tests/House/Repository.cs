using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Purlin.Tests.House;

/// <summary>The files of the repository as the house rules read them.</summary>
internal static class Repository
{
    private static readonly string[] Built = ["bin", "obj", "node_modules", "artifacts", ".git", "Migrations"];

    public static string Root { get; } = typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(data => data.Key == "RepositoryRoot").Value!;

    public static IReadOnlyList<string> Files(string folder, string pattern) =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories).Where(file => !Path.GetRelativePath(Root, file).Split('/', '\\').Any(Built.Contains)).Order(StringComparer.Ordinal)];

    public static string Short(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/');

    /// <summary>Every C# file of our own with its syntax tree; <paramref name="folders"/> such as <c>src</c>, <c>tests</c>.</summary>
    public static IReadOnlyList<(string File, SyntaxNode Tree)> Sources(params string[] folders) =>
        [.. folders.Where(folder => Directory.Exists(Path.Combine(Root, folder))).SelectMany(folder => Files(folder, "*.cs")).Select(file => (Short(file), CSharpSyntaxTree.ParseText(File.ReadAllText(file)).GetRoot()))];
}
