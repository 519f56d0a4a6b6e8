import js from "@eslint/js";
import jsdoc from "eslint-plugin-jsdoc";
import reactHooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";

const SIZE_LIMITS = {
  "max-lines": ["error", { max: 250, skipBlankLines: false, skipComments: false }],
  "max-lines-per-function": ["error", { max: 50, skipBlankLines: true, skipComments: true }],
};

export default tseslint.config(
  {
    ignores: [
      "node_modules",
      ".next",
      ".build",
      ".data",
      "test-results",
      "prisma/generated",
      "next-env.d.ts",
      "dependency-cruiser.cjs",
    ],
  },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: { allowDefaultProject: ["*.mjs"] } } },
    rules: {
      ...SIZE_LIMITS,
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      // Units stand beside numbers in texts all over the project; a number in a template is not a mistake here.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      // Taking a field out of an object by naming it is the way to leave it out.
      "@typescript-eslint/no-unused-vars": ["error", { ignoreRestSiblings: true }],
      eqeqeq: "error",
    },
  },
  {
    files: ["lib/**/*.ts", "lib/**/*.tsx"],
    ignores: ["lib/model/**"],
    rules: { "@typescript-eslint/explicit-module-boundary-types": "error" },
  },
  {
    files: ["lib/calc/**/*.ts"],
    ignores: ["lib/calc/**/index.ts", "lib/calc/**/tables/**"],
    plugins: { jsdoc },
    settings: { jsdoc: { mode: "typescript", tagNamePreference: { returns: "returns" } } },
    rules: {
      "jsdoc/require-jsdoc": [
        "error",
        { publicOnly: true, require: { FunctionDeclaration: true, ClassDeclaration: true }, contexts: [] },
      ],
      "jsdoc/require-description": ["error", { contexts: ["FunctionDeclaration"] }],
      "jsdoc/require-returns": ["error", { publicOnly: true }],
      "jsdoc/no-types": "error",
      "jsdoc/check-tag-names": ["error", { definedTags: ["validRange", "source"] }],
    },
  },
  { files: ["lib/calc/**/tables/**", "tests/reference/**"], rules: { "max-lines": "off" } },
  {
    files: ["app/**/*.tsx", "lib/ui/**/*.tsx"],
    plugins: { "react-hooks": reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  {
    files: ["tests/**/*.ts"],
    rules: { "max-lines-per-function": "off" },
  },
  {
    files: ["**/*.mjs"],
    ...tseslint.configs.disableTypeChecked,
  },
  {
    files: ["**/*.mjs"],
    languageOptions: {
      globals: {
        process: "readonly",
        console: "readonly",
        setTimeout: "readonly",
        clearTimeout: "readonly",
        setInterval: "readonly",
        clearInterval: "readonly",
        URL: "readonly",
        fetch: "readonly",
      },
    },
    rules: { "@typescript-eslint/explicit-module-boundary-types": "off" },
  },
);
